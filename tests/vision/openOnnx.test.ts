import { readFile } from 'node:fs/promises';
import { Tensor } from 'onnxruntime-web/wasm';
import { expect, it } from 'vitest';
import { openOnnx } from '../../src/vision/openOnnx';
import golden from '../golden/convolution.json';
import { largestDifference } from '../helpers/largestDifference';

const model = new URL('../golden/convolution.onnx', import.meta.url);

// Source: SciPy's correlate2d with the same weights, tests/golden/convolution.py.
it('runs a small network in Node and gives what SciPy gives', async () => {
  const session = await openOnnx(new Uint8Array(await readFile(model)));
  const picture = new Tensor('float32', Float32Array.from(golden.picture), golden.shape);
  const { features } = await session.run({ picture });
  expect(features?.dims).toEqual([1, 2, 9, 11]);
  expect(largestDifference(features?.data as Float32Array, golden.features)).toBeLessThan(golden.tolerance);
  await session.release();
});

it('opens a network by its address too', async () => {
  const session = await openOnnx(model.href);
  expect([session.inputNames, session.outputNames]).toEqual([['picture'], ['features']]);
  await session.release();
});

it('refuses what is no network', async () => {
  await expect(openOnnx(new Uint8Array([1, 2, 3]))).rejects.toThrow(/protobuf parsing failed/i);
});
