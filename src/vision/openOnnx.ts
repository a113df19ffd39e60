import wasmUrl from 'onnxruntime-web/ort-wasm-simd-threaded.wasm?url';
import { env, InferenceSession } from 'onnxruntime-web/wasm';
import { readBytes } from './readBytes';

const MOST_THREADS = 4;

let prepared: Promise<void> | undefined;

/**
 * Opens a neural network; the same code in a page, a worker and Node, from the program's own files only.
 *
 * @param model - An ONNX file: its bytes, or what `import url from './model.onnx?url'` gives.
 * @returns A session of onnxruntime-web; give it back with `release`.
 * @throws Error if the engine or the network cannot be loaded, or is no ONNX network.
 */
export async function openOnnx(model: string | Uint8Array): Promise<InferenceSession> {
  prepared ??= prepare().catch((error: unknown) => {
    prepared = undefined;
    throw error;
  });
  await prepared;
  const bytes = typeof model === 'string' ? await readBytes(model) : model;
  return InferenceSession.create(bytes, { executionProviders: ['wasm'], graphOptimizationLevel: 'all' });
}

async function prepare(): Promise<void> {
  env.logLevel = 'error';
  env.wasm.numThreads = threadCount();
  env.wasm.wasmBinary = (await readBytes(wasmUrl)).buffer;
}

/** Several threads share memory, which a page may only do when it is isolated from other origins. */
function threadCount(): number {
  return globalThis.crossOriginIsolated ? Math.min(MOST_THREADS, navigator.hardwareConcurrency) : 1;
}
