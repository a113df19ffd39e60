import startOpenCv from 'virtual:opencv-factory';
import wasmUrl from 'opencv-wasm/opencv.wasm?url';
import type { OpenCv } from './openCvShape';
import { readBytes } from './readBytes';

export type { Mat, OpenCv } from './openCvShape';

let opened: Promise<OpenCv> | undefined;

/**
 * Opens OpenCV, once per page, worker or process; the same code in all three.
 *
 * @returns The engine that every other function of this folder takes first.
 * @throws Error if its WebAssembly cannot be loaded; the next call tries again.
 */
export function openOpenCv(): Promise<OpenCv> {
  opened ??= start().catch((error: unknown) => {
    opened = undefined;
    throw error;
  });
  return opened;
}

async function start(): Promise<OpenCv> {
  const wasm = await WebAssembly.compile(await readBytes(wasmUrl));
  return new Promise((resolve) => {
    const cv = startOpenCv({
      instantiateWasm(imports, receive) {
        const instance = new WebAssembly.Instance(wasm, imports);
        receive(instance, wasm);
        return instance.exports;
      },
      onRuntimeInitialized: () => queueMicrotask(() => resolve(cv)),
      print: () => {},
      printErr: (text) => console.warn(`OpenCV: ${text}`),
    });
  });
}
