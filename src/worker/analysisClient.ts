import type { AnalysisOptions, Stage } from '../analysis/options';
import type { PhotoReport } from '../analysis/report';
import { Refusal } from '../image/notice';
import type { Answer, Order } from './messages';

export interface Watching {
  /** Aborts the analysis, whether it waits or runs. */
  readonly signal?: AbortSignal;
  /** Told of each part of the work; `share` is 0 to 1 within the stage. */
  readonly onProgress?: (stage: Stage, share: number) => void;
}

export interface AnalysisClient {
  /**
   * Measures a photo when those asked for before are done.
   *
   * @throws Refusal if the photo cannot be graded.
   * @throws DOMException `AbortError`, at once, if it is aborted or the client closed.
   * @throws Error if the analysis broke; the next photo starts afresh.
   */
  analyze(file: Blob, options: AnalysisOptions, watching?: Watching): Promise<{ report: PhotoReport }>;
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
  const waiting: Job[] = [];
  let running: Job | undefined;
  let worker: Worker | undefined;

  function runNext() {
    if (running) return;
    running = waiting.shift();
    if (!running) return;
    worker ??= listen(startWorker());
    worker.postMessage(running.order);
  }

  function listen(started: Worker): Worker {
    started.onmessage = ({ data }: MessageEvent<Answer>) => {
      if (data.kind !== 'progress') finish((job) => settle(job, data));
      else if (!running?.signal?.aborted) running?.onProgress?.(data.stage, data.share);
    };
    started.onerror = (event) => crash(event.message);
    started.onmessageerror = () => crash('an answer could not be read');
    return started;
  }

  function crash(reason: string | undefined) {
    worker?.terminate();
    worker = undefined;
    const why = reason ? ` (${reason})` : '';
    finish((job) => job.reject(new Error(`The analysis broke off${why}: try the photo again.`)));
  }

  function finish(end: (job: Job) => void) {
    const job = running;
    running = undefined;
    if (job) end(job);
    runNext();
  }

  function abort(job: Job) {
    job.reject(abortError());
    if (job === running) worker?.postMessage({ kind: 'stop' } satisfies Order);
    const place = waiting.indexOf(job);
    if (place >= 0) waiting.splice(place, 1);
  }

  return {
    analyze: (file, options, watching = {}) =>
      new Promise((resolve, reject) => {
        const job: Job = { ...watching, order: { kind: 'analyze', file, options }, resolve, reject };
        if (watching.signal?.aborted) return reject(abortError());
        watching.signal?.addEventListener('abort', () => abort(job), { once: true });
        waiting.push(job);
        runNext();
      }),
    close() {
      worker?.terminate();
      worker = undefined;
      for (const job of [running, ...waiting.splice(0)]) job?.reject(abortError());
      running = undefined;
    },
  };
}

function startAnalysisWorker(): Worker {
  return new Worker(new URL('./analysisWorker.ts', import.meta.url), { type: 'module' });
}

function settle(job: Job, answer: Exclude<Answer, { kind: 'progress' }>): void {
  if (answer.kind === 'done') job.resolve({ report: answer.report });
  else if (answer.kind === 'refused') job.reject(new Refusal(answer.code));
  else if (answer.kind === 'stopped') job.reject(abortError());
  else job.reject(new Error(`The analysis failed: ${answer.message}`));
}

function abortError(): DOMException {
  return new DOMException('The analysis was stopped.', 'AbortError');
}
