import type { AnalysisOptions, FoundStones, Stage } from '../analysis/options';
import type { PhotoReport } from '../analysis/report';
import { Refusal } from '../image/notice';
import { texts } from '../texts/speech';
import type { Answer, Files, Order } from './messages';

export interface Watching {
  /** Aborts the analysis, whether it waits or runs. */
  readonly signal?: AbortSignal;
  /** Told of each part of the work; `share` is 0 to 1 within the stage, `found` comes once. */
  readonly onProgress?: (stage: Stage, share: number, found?: FoundStones) => void;
}

export interface AnalysisClient {
  /**
   * Measures a photo, or several shots of one scene, when those asked for before are done; `lampMoved` shows the
   * same tray with the lamp elsewhere.
   *
   * @throws Refusal if the photo cannot be graded.
   * @throws DOMException `AbortError`, at once, if it is aborted or the client closed.
   * @throws Error if the analysis broke; the next photo starts afresh.
   */
  analyze(
    files: Files,
    options: AnalysisOptions,
    watching?: Watching,
    lampMoved?: Blob | null,
  ): Promise<{ report: PhotoReport }>;
  /** Ends the worker and aborts all that waits. */
  close(): void;
}

interface Job extends Watching {
  readonly order: Order;
  readonly resolve: (result: { report: PhotoReport }) => void;
  readonly reject: (error: unknown) => void;
}

/** Starts the analysis in a worker of its own, which is opened with the first photo and kept. */
export function openAnalysis(startWorker: () => Worker = startAnalysisWorker): AnalysisClient {
  return new QueuedAnalysis(startWorker);
}

class QueuedAnalysis implements AnalysisClient {
  readonly #startWorker: () => Worker;
  readonly #waiting: Job[] = [];
  #running: Job | undefined;
  #worker: Worker | undefined;

  constructor(startWorker: () => Worker) {
    this.#startWorker = startWorker;
  }

  analyze(
    files: Files,
    options: AnalysisOptions,
    watching: Watching = {},
    lampMoved: Blob | null = null,
  ): Promise<{ report: PhotoReport }> {
    return new Promise((resolve, reject) => {
      const job: Job = {
        ...watching,
        order: { kind: 'analyze', files, options, lampMoved },
        resolve,
        reject,
      };
      if (watching.signal?.aborted) return reject(abortError());
      watching.signal?.addEventListener('abort', () => this.#abort(job), { once: true });
      this.#waiting.push(job);
      this.#runNext();
    });
  }

  close(): void {
    this.#dismiss();
    for (const job of [this.#running, ...this.#waiting.splice(0)]) job?.reject(abortError());
    this.#running = undefined;
  }

  #runNext(): void {
    if (this.#running) return;
    this.#running = this.#waiting.shift();
    if (!this.#running) return;
    this.#worker ??= this.#listenTo(this.#startWorker());
    this.#worker.postMessage(this.#running.order);
  }

  #listenTo(worker: Worker): Worker {
    worker.onmessage = ({ data }: MessageEvent<Answer>) => {
      if (data.kind === 'failed') this.#dismiss();
      if (data.kind !== 'progress') this.#finish((job) => settle(job, data));
      else if (!this.#running?.signal?.aborted)
        this.#running?.onProgress?.(data.stage, data.share, data.found);
    };
    worker.onerror = (event) => {
      event.preventDefault();
      this.#crash(event.message);
    };
    worker.onmessageerror = () => this.#crash(texts().notices.answerUnread);
    return worker;
  }

  /** A stopped job keeps its place until the worker lets go of it; its promise is rejected at once. */
  #abort(job: Job): void {
    job.reject(abortError());
    if (job === this.#running) this.#worker?.postMessage({ kind: 'stop' } satisfies Order);
    const place = this.#waiting.indexOf(job);
    if (place >= 0) this.#waiting.splice(place, 1);
  }

  #crash(reason: string | undefined): void {
    this.#dismiss();
    this.#finish((job) => job.reject(new Error(texts().notices.brokeOff(reason ?? ''))));
  }

  /** Where something broke that nobody foresaw, an engine's memory may be broken too: the next photo gets a new worker. */
  #dismiss(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
  }

  #finish(end: (job: Job) => void): void {
    const job = this.#running;
    this.#running = undefined;
    if (job) end(job);
    this.#runNext();
  }
}

function startAnalysisWorker(): Worker {
  return new Worker(new URL('./analysisWorker.ts', import.meta.url), { type: 'module' });
}

function settle(job: Job, answer: Exclude<Answer, { kind: 'progress' }>): void {
  if (answer.kind === 'done') job.resolve({ report: answer.report });
  else if (answer.kind === 'refused') job.reject(new Refusal(answer.code));
  else if (answer.kind === 'stopped') job.reject(abortError());
  else job.reject(new Error(texts().notices.analysisFailed(answer.message)));
}

function abortError(): DOMException {
  return new DOMException('The analysis was stopped.', 'AbortError');
}
