import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { compileKernels } from '../../.config/compileKernels.mjs';

it('is what AssemblyScript makes of its source (npm run kernels)', async () => {
  const kept = readFileSync(new URL('../../src/kernels/kernels.wasm', import.meta.url));
  const made = await compileKernels();
  expect(Buffer.from(made).equals(kept)).toBe(true);
  expect(WebAssembly.Module.exports(new WebAssembly.Module(kept)).length).toBeGreaterThan(3);
});
