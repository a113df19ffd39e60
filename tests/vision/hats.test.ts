import { expect, it } from 'vitest';
import type { Raster } from '../../src/image/raster';
import { blackHat } from '../../src/vision/blackHat';
import { openOpenCv } from '../../src/vision/openCv';
import { topHat } from '../../src/vision/topHat';
import { drawRaster } from '../helpers/drawRaster';
import { largestDifference } from '../helpers/largestDifference';
import { COLOR, GRAY, golden } from '../helpers/openCvGolden';

const cv = await openOpenCv();

it('finds a dark spot and a bright spot narrower than the window', () => {
  const spots = drawRaster([4, 4, 4, 4, 4, 4, 4], [4, 1, 4, 4, 4, 7, 4], [4, 4, 4, 4, 4, 4, 4]);
  const at = (raster: Raster, column: number) => raster.data[7 + column];
  expect([at(blackHat(cv, spots, 3), 1), at(blackHat(cv, spots, 3), 5)]).toEqual([3, 0]);
  expect([at(topHat(cv, spots, 3), 1), at(topHat(cv, spots, 3), 5)]).toEqual([0, 3]);
});

// Source: OpenCV 4.6, tests/golden/opencv.py.
it("gives OpenCV's own values", () => {
  expect(largestDifference(blackHat(cv, GRAY, 5).data, golden.blackHat5)).toBeLessThan(golden.tolerance);
  expect(largestDifference(topHat(cv, GRAY, 3).data, golden.topHat3)).toBeLessThan(golden.tolerance);
});

it('gives the black hat of a picture as the top hat of its negative', () => {
  const negative: Raster = { ...GRAY, data: GRAY.data.map((value) => -value) };
  expect([...topHat(cv, negative, 5).data]).toEqual([...blackHat(cv, GRAY, 5).data]);
});

it('refuses colors and an even window', () => {
  expect(() => blackHat(cv, COLOR, 3)).toThrow('Gray-scale morphology needs a picture of one channel.');
  expect(() => topHat(cv, GRAY, 4)).toThrow('A window of 4 pixels is not an odd whole number of them.');
});
