import { expect, it } from 'vitest';
import { distanceToEdge, distanceToMask } from '../../src/vision/distanceToEdge';
import { openOpenCv } from '../../src/vision/openCv';
import { drawMask } from '../helpers/drawMask';
import { largestDifference } from '../helpers/largestDifference';
import { golden, MASK } from '../helpers/openCvGolden';

const cv = await openOpenCv();

it('measures to the nearest pixel outside, straight or slanting', () => {
  const { data } = distanceToEdge(cv, drawMask('.....', '.###.', '.###.', '.####', '.....'));
  expect([...data.subarray(10, 15)]).toEqual([0, 1, 2, 1, 0]);
  const corner = distanceToEdge(cv, drawMask('####', '####', '####', '###.'));
  expect(corner.data[10]).toBeCloseTo(Math.SQRT2, 6);
});

it('takes the border of the picture as an edge', () => {
  expect([...distanceToEdge(cv, drawMask('###', '###', '###')).data]).toEqual([1, 1, 1, 1, 2, 1, 1, 1, 1]);
});

// Source: OpenCV 4.6 with one more pixel of outside around, tests/golden/opencv.py.
it("gives OpenCV's own distances", () => {
  expect(largestDifference(distanceToEdge(cv, MASK).data, golden.distanceToEdge)).toBeLessThan(
    golden.tolerance,
  );
});

it('is 0 all over an empty mask', () => {
  expect([...distanceToEdge(cv, drawMask('..', '..')).data]).toEqual([0, 0, 0, 0]);
});

it('measures to the nearest pixel of a mask, whatever lies beyond the border', () => {
  const { data } = distanceToMask(cv, drawMask('#....', '.....', '....#'));
  const nearest = (row: number, column: number) =>
    Math.min(Math.hypot(row, column), Math.hypot(row - 2, column - 4));
  data.forEach((distance, i) => {
    expect(distance).toBeCloseTo(nearest(Math.floor(i / 5), i % 5), 6);
  });
});
