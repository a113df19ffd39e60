export interface EnginesAnswer {
  readonly resized: number[];
  readonly features: number[];
  readonly isIsolated: boolean;
}

/** Runs both engines once in a module worker. */
export function askEngines(): Promise<EnginesAnswer> {
  const worker = new Worker(new URL('./enginesWorker.ts', import.meta.url), { type: 'module' });
  return new Promise<EnginesAnswer>((resolve, reject) => {
    worker.onmessage = ({ data }) => ('failed' in data ? reject(new Error(data.failed)) : resolve(data));
    worker.onerror = (event) => reject(new Error(event.message));
  }).finally(() => worker.terminate());
}
