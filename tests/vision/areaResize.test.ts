import { expect, it } from 'vitest';
import { areaResize } from '../../src/vision/areaResize';
import { openOpenCv } from '../../src/vision/openCv';
import { drawRaster } from '../helpers/drawRaster';
import { largestDifference } from '../helpers/largestDifference';
import { COLOR, GRAY, golden } from '../helpers/openCvGolden';

const cv = await openOpenCv();

it('averages blocks of pixels', () => {
  const small = areaResize(cv, drawRaster([0, 1, 4, 4], [1, 2, 4, 8]), 2, 1);
  expect([...small.data]).toEqual([1, 5]);
});

// Source: OpenCV 4.6, tests/golden/opencv.py.
it("gives OpenCV's own values, also for sizes that do not divide and for three channels", () => {
  const gray = areaResize(cv, GRAY, 7, 5);
  const color = areaResize(cv, COLOR, 8, 6);
  expect(largestDifference(gray.data, golden.areaResize.gray7x5)).toBeLessThan(golden.tolerance);
  expect(largestDifference(color.data, golden.areaResize.color8x6)).toBeLessThan(golden.tolerance);
  expect([color.width, color.height, color.channels]).toEqual([8, 6, 3]);
});

it('keeps the mean of the light', () => {
  const mean = (values: Float32Array) => values.reduce((sum, value) => sum + value, 0) / values.length;
  expect(mean(areaResize(cv, GRAY, 8, 6).data)).toBeCloseTo(mean(GRAY.data), 6);
});

it('leaves a picture of the same size as it is', () => {
  expect([...areaResize(cv, GRAY, 24, 18).data]).toEqual([...GRAY.data]);
});

it('refuses to enlarge', () => {
  expect(() => areaResize(cv, GRAY, 25, 18)).toThrow(
    'Cannot shrink 24 × 18 to 25 × 18: the new size must lie within the old.',
  );
});
