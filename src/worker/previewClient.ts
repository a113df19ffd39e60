import type { FrameKnowledge, Preview, PreviewClient } from '../camera/preview';
import type { PreviewAnswer, PreviewOrder } from './messages';

/** Starts a worker that looks at frames, beside the one that measures photos. */
export function openPreview(
  startWorker: () => Worker = startPreviewWorker,
): PreviewClient<ImageBitmap, Blob> {
  return new WorkerPreview(startWorker);
}

interface Asked {
  readonly resolve: (answer: PreviewAnswer) => void;
  readonly reject: (error: unknown) => void;
}

class WorkerPreview implements PreviewClient<ImageBitmap, Blob> {
  readonly #startWorker: () => Worker;
  readonly #asked = new Map<number, Asked>();
  #worker: Worker;
  /** Something broke in the worker, and with it perhaps an engine's memory: it is replaced once it has answered all. */
  #isSpoiled = false;
  #lastId = 0;
  #isLooking = false;
  #ended: Error | null = null;

  constructor(startWorker: () => Worker) {
    this.#startWorker = startWorker;
    this.#worker = this.#listenTo(startWorker());
  }

  async look(frame: ImageBitmap, knowledge: FrameKnowledge): Promise<Preview | null> {
    if (this.#isLooking) {
      frame.close();
      return null;
    }
    this.#isLooking = true;
    try {
      const answer = await this.#ask((id) => ({ kind: 'preview', id, frame, knowledge }), [frame]);
      if (answer.kind !== 'preview') throw new Error('The worker answered something else than was asked.');
      return answer.preview;
    } finally {
      this.#isLooking = false;
    }
  }

  async sharpnessOf(photo: Blob): Promise<number> {
    const answer = await this.#ask((id) => ({ kind: 'sharpness', id, photo }), []);
    if (answer.kind !== 'sharpness') throw new Error('The worker answered something else than was asked.');
    return answer.sharpness;
  }

  close(): void {
    this.#end(new DOMException('The camera was closed.', 'AbortError'));
  }

  #listenTo(worker: Worker): Worker {
    worker.onmessage = ({ data }: MessageEvent<PreviewAnswer>) => {
      if (data.kind === 'broken') this.#isSpoiled = true;
      this.#asked.get(data.id)?.resolve(data);
      this.#asked.delete(data.id);
    };
    worker.onerror = (event) => {
      event.preventDefault();
      this.#end(new Error(`The live picture could not be looked at: ${event.message}`));
    };
    return worker;
  }

  async #ask(orderOf: (id: number) => PreviewOrder, transfer: Transferable[]): Promise<PreviewAnswer> {
    if (this.#ended) throw this.#ended;
    if (this.#isSpoiled && this.#asked.size === 0) this.#replace();
    const id = ++this.#lastId;
    const answer = await new Promise<PreviewAnswer>((resolve, reject) => {
      this.#asked.set(id, { resolve, reject });
      this.#worker.postMessage(orderOf(id), transfer);
    });
    if (answer.kind === 'broken')
      throw new Error(`The live picture could not be looked at: ${answer.message}`);
    return answer;
  }

  #replace(): void {
    this.#worker.terminate();
    this.#worker = this.#listenTo(this.#startWorker());
    this.#isSpoiled = false;
  }

  #end(error: Error): void {
    this.#worker.terminate();
    this.#ended ??= error;
    for (const { reject } of this.#asked.values()) reject(error);
    this.#asked.clear();
  }
}

function startPreviewWorker(): Worker {
  return new Worker(new URL('./analysisWorker.ts', import.meta.url), { type: 'module' });
}
