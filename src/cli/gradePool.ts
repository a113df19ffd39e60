import { type ChildProcess, fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { GradeFileOptions } from './gradeFile';

const WORKER = fileURLToPath(new URL('./gradeWorker.ts', import.meta.url));
/** A photo that ends a process is tried once more in a fresh one: the system may have ended it for lack of memory. */
const TRIES = 2;

/** What a process of the pool is told: first how to grade, then one photo after the other. */
export type PoolOrder =
  | { readonly kind: 'settings'; readonly settings: GradeFileOptions }
  | { readonly kind: 'grade'; readonly path: string; readonly picture: string | null };

/** What it answers. */
export type PoolAnswer =
  | { readonly kind: 'ready' }
  | {
      readonly kind: 'graded';
      /** The photo's entry, as JSON. */
      readonly entry: string;
      readonly isRefused: boolean;
      /** What a person is told. */
      readonly summary: string;
      /** Most memory the process has had, bytes. */
      readonly peakBytes: number;
    }
  | { readonly kind: 'broke'; readonly message: string };

export type GradedInPool = Extract<PoolAnswer, { kind: 'graded' }>;

export interface GradePool {
  /**
   * Grades a photo in the next process that is free.
   *
   * @param picture - Path of the sorting picture to write; null for none.
   * @throws Error if the photo broke the process, or what it ran, twice.
   */
  readonly grade: (path: string, picture: string | null) => Promise<GradedInPool>;
  /** Ends all processes. */
  readonly close: () => void;
}

/** Processes of this computer that grade photos, each with engines of its own, kept from photo to photo. */
export function openPool(jobs: number, settings: GradeFileOptions): GradePool {
  const members = Array.from({ length: jobs }, () => new Member(settings));
  const free = [...members];
  const waiting: ((member: Member) => void)[] = [];
  const take = () =>
    new Promise<Member>((resolve) => {
      const member = free.pop();
      if (member) resolve(member);
      else waiting.push(resolve);
    });
  const giveBack = (member: Member) => {
    const next = waiting.shift();
    if (next) next(member);
    else free.push(member);
  };
  return {
    grade: async (path, picture) => {
      const member = await take();
      try {
        return await member.grade(path, picture);
      } finally {
        giveBack(member);
      }
    },
    close: () => {
      for (const member of members) member.end();
    },
  };
}

/** One process, started anew after it broke. */
class Member {
  readonly #settings: GradeFileOptions;
  #child: ChildProcess | undefined;

  constructor(settings: GradeFileOptions) {
    this.#settings = settings;
  }

  async grade(path: string, picture: string | null): Promise<GradedInPool> {
    for (let tries = 1; ; tries++) {
      try {
        this.#child ??= await this.#start();
        const child = this.#child;
        const answer = await answerTo(child, { kind: 'grade', path, picture });
        if (answer.kind === 'graded') return answer;
        throw new Error(answer.kind === 'broke' ? answer.message : 'It answered something else.');
      } catch (error) {
        // What an engine holds after it broke is not to be trusted.
        this.end();
        if (tries === TRIES) throw error;
      }
    }
  }

  end(): void {
    this.#child?.kill();
    this.#child = undefined;
  }

  async #start(): Promise<ChildProcess> {
    const run = process.env.GLINTGRADE_RUN;
    if (run === undefined) throw new Error('Start this through .config/run.mjs.');
    const child = fork(run, [WORKER], { stdio: ['ignore', 'ignore', 'inherit', 'ipc'] });
    await answerTo(child, { kind: 'settings', settings: this.#settings });
    return child;
  }
}

/** Gives an order to a process that does nothing else meanwhile. */
function answerTo(child: ChildProcess, order: PoolOrder): Promise<PoolAnswer> {
  return new Promise((resolve, reject) => {
    const done = (end: () => void) => {
      child.off('message', onMessage).off('exit', onExit).off('error', onError);
      end();
    };
    const onMessage = (answer: PoolAnswer) => done(() => resolve(answer));
    const onExit = () => done(() => reject(new Error('Its process ended.')));
    const onError = (error: Error) => done(() => reject(error));
    child.on('message', onMessage).on('exit', onExit).on('error', onError);
    if (child.exitCode !== null || child.signalCode !== null) return onExit();
    child.send(order);
  });
}
