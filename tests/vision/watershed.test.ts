import { expect, it } from 'vitest';
import { watershed } from '../../src/vision/watershed';
import golden from '../golden/watershed.json';
import { drawMask } from '../helpers/drawMask';
import { drawRaster } from '../helpers/drawRaster';

const relief = {
  width: golden.width,
  height: golden.height,
  channels: 1,
  data: Float32Array.from(golden.relief),
} as const;
const markers = Int32Array.from(golden.markers);

it('meets at the ridge, wherever the markers stand', () => {
  const ridge = drawRaster([0, 1, 2, 9, 2, 1, 0], [0, 1, 2, 9, 2, 1, 0]);
  const labels = watershed(ridge, Int32Array.of(0, 0, 1, 0, 0, 0, 2, 0, 0, 0, 0, 0, 0, 0));
  expect([...labels.subarray(0, 3)]).toEqual([1, 1, 1]);
  expect([...labels.subarray(4, 7)]).toEqual([2, 2, 2]);
});

// Source: scikit-image 0.19, tests/golden/watershed.py.
it('floods as scikit-image does, with and without a mask', () => {
  const within = { width: golden.width, height: golden.height, data: Uint8Array.from(golden.within) };
  expect([...watershed(relief, markers)]).toEqual(golden.labels);
  expect([...watershed(relief, markers, within)]).toEqual(golden.labelsWithin);
});

it('does not change when the relief is lifted', () => {
  const lifted = { ...relief, data: relief.data.map((height) => 4 * height + 8) };
  expect(watershed(lifted, markers)).toEqual(watershed(relief, markers));
});

it('leaves dry what no marker can reach', () => {
  const labels = watershed(drawRaster([0, 0, 0, 0]), Int32Array.of(5, 0, 0, 0), drawMask('##.#'));
  expect([...labels]).toEqual([5, 5, 0, 0]);
});

it('refuses markers of another size', () => {
  expect(() => watershed(relief, new Int32Array(3))).toThrow('must be of one size and one channel');
});
