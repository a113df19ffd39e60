import { expect, it } from 'vitest';
import type { Mask, Raster } from '../../src/image/raster';
import { patternSpread } from '../../src/measure/patternSpread';

/** A strip of pixels of one row, each of three channels. */
function strip(colors: readonly (readonly [number, number, number])[]): { stone: Raster; mask: Mask } {
  const width = colors.length;
  return {
    stone: { width, height: 1, channels: 3, data: Float32Array.from(colors.flat()) },
    mask: { width, height: 1, data: new Uint8Array(width).fill(1) },
  };
}

const striped = (a: readonly [number, number, number], b: readonly [number, number, number]) =>
  strip(Array.from({ length: 20 }, (_, i) => (i % 4 < 2 ? a : b)));

it('is zero for stripes of gray', () => {
  const { stone, mask } = striped([0.1, 0.1, 0.1], [0.4, 0.4, 0.4]);
  expect(patternSpread(stone, mask)).toBeCloseTo(0, 5);
});

it('is the difference of the channels over their mean for stripes of color', () => {
  // From dark to (0.6, 0.3, 0.3) the channels grow as 1.5 : 0.75 : 0.75 of their mean.
  const { stone, mask } = striped([0, 0, 0], [0.6, 0.3, 0.3]);
  expect(patternSpread(stone, mask)).toBeCloseTo(0.75, 5);
});

it('law: twice the exposure changes nothing', () => {
  const once = striped([0.05, 0.1, 0.02], [0.3, 0.2, 0.1]);
  const twice = { ...once.stone, data: once.stone.data.map((value) => 2 * value) };
  expect(patternSpread(twice, once.mask)).toBeCloseTo(patternSpread(once.stone, once.mask), 5);
});

it('leaves the brightest tenth out, where the lamp may be mirrored', () => {
  const plain = striped([0.1, 0.1, 0.1], [0.4, 0.4, 0.4]);
  const data = plain.stone.data.slice();
  data.set([9, 1, 1], 0);
  expect(patternSpread({ ...plain.stone, data }, plain.mask)).toBeCloseTo(0, 5);
});

it('is zero for one even color', () => {
  const { stone, mask } = striped([0.3, 0.1, 0.2], [0.3, 0.1, 0.2]);
  expect(patternSpread(stone, mask)).toBe(0);
});
