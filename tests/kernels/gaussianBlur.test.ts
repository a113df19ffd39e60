import { expect, it } from 'vitest';
import { gaussianBlur } from '../../src/kernels/gaussianBlur';
import { drawRaster } from '../helpers/drawRaster';
import { largestDifference } from '../helpers/largestDifference';
import { COLOR, GRAY, golden } from '../helpers/openCvGolden';

it('spreads one bright pixel symmetrically and keeps its light', () => {
  const row = new Array<number>(21).fill(0);
  row[10] = 1;
  const blurred = gaussianBlur(drawRaster(row), 1).data;
  expect(blurred.reduce((sum, value) => sum + value, 0)).toBeCloseTo(1, 6);
  expect(blurred[9]).toBeCloseTo(blurred[11] ?? Number.NaN, 7);
  // A Gaussian of σ = 1 falls to exp(−½) of its peak one pixel away.
  expect((blurred[11] ?? 0) / (blurred[10] ?? 1)).toBeCloseTo(Math.exp(-0.5), 5);
});

// Source: OpenCV 4.6, tests/golden/opencv.py.
it("gives OpenCV's own values", () => {
  expect(largestDifference(gaussianBlur(GRAY, 1.3).data, golden.gaussianBlur['gray1.3'])).toBeLessThan(
    golden.tolerance,
  );
  expect(largestDifference(gaussianBlur(COLOR, 0.8).data, golden.gaussianBlur['color0.8'])).toBeLessThan(
    golden.tolerance,
  );
});

it('leaves an even picture even, up to its border', () => {
  const even = gaussianBlur(drawRaster([0.25, 0.25, 0.25], [0.25, 0.25, 0.25]), 2);
  expect(largestDifference(even.data, new Array<number>(6).fill(0.25))).toBeLessThan(1e-6);
});

it('refuses a blur that is not positive', () => {
  expect(() => gaussianBlur(GRAY, 0)).toThrow('A blur of 0 pixels is not positive.');
});
