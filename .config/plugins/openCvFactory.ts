import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { patchOpenCv } from './patchOpenCv.ts';

const ID = 'virtual:opencv-factory';
const RESOLVED_ID = `\0${ID}`;

/** Serves `virtual:opencv-factory`: OpenCV's start-up function as a module that needs no `eval`. */
export function openCvFactory(): Plugin {
  return {
    name: 'opencv-factory',
    enforce: 'pre',
    resolveId: (id) => (id === ID ? RESOLVED_ID : undefined),
    load(id) {
      if (id !== RESOLVED_ID) return undefined;
      const source = createRequire(import.meta.url).resolve('opencv-wasm/opencv.js');
      const glue = fileURLToPath(new URL('openCvGlue.js', import.meta.url));
      return { code: patchOpenCv(readFileSync(source, 'utf8'), readFileSync(glue, 'utf8')), map: null };
    },
  };
}
