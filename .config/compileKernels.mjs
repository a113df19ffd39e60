/**
 * Compiles `src/kernels/assembly` to WebAssembly with SIMD: `npm run kernels`. What is made is kept in the repository, so
 * that neither the page nor the command waits for a compiler; `tests/kernels/compiled.test.ts` holds that it is up to date.
 */

import { writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import asc from 'assemblyscript/asc';

const kernels = fileURLToPath(new URL('../src/kernels', import.meta.url));
/** Of 64 kB each: enough that the memory hardly ever grows, see `src/kernels/openKernels.ts`. */
const PAGES = '512';
const OPTIONS = ['-O3', '--runtime', 'stub', '--enable', 'simd', '--noAssert', '--initialMemory', PAGES];

/**
 * @returns {Promise<Uint8Array>} The module's bytes.
 * @throws {Error} with what the compiler says is wrong.
 */
export async function compileKernels() {
  /** @type {Uint8Array | null} */
  let made = null;
  const { error, stderr } = await asc.main(
    ['kernels.ts', '--baseDir', `${kernels}/assembly`, '-o', 'kernels.wasm', ...OPTIONS],
    {
      writeFile(name, contents) {
        if (name === 'kernels.wasm') made = contents;
      },
    },
  );
  if (error || !made) throw new Error(stderr.toString());
  return made;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  await writeFile(`${kernels}/kernels.wasm`, await compileKernels());
}
