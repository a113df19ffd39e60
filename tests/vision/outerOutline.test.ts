import { expect, it } from 'vitest';
import { openOpenCv } from '../../src/vision/openCv';
import { outerOutline } from '../../src/vision/outerOutline';
import { drawMask } from '../helpers/drawMask';
import { golden, MASK } from '../helpers/openCvGolden';

const cv = await openOpenCv();
const sorted = (points: readonly (readonly number[])[]) => points.map(String).sort();

it('walks around the larger of two pieces and ignores its hole', () => {
  const outline = outerOutline(cv, drawMask('#.....', '...###', '...#.#', '...###'));
  const ring = [
    [1, 3],
    [1, 4],
    [1, 5],
    [2, 3],
    [2, 5],
    [3, 3],
    [3, 4],
    [3, 5],
  ];
  expect(sorted(outline)).toEqual(sorted(ring));
});

// Source: OpenCV 4.6, tests/golden/opencv.py.
it("gives OpenCV's own outline", () => {
  expect(outerOutline(cv, MASK)).toEqual(golden.outerOutline);
});

it('steps only to neighbors, also from the last point to the first', () => {
  const outline = outerOutline(cv, MASK);
  outline.forEach(([row, column], i) => {
    const [nextRow, nextColumn] = outline[(i + 1) % outline.length] ?? [Number.NaN, Number.NaN];
    expect(Math.max(Math.abs(nextRow - row), Math.abs(nextColumn - column))).toBe(1);
  });
});

it('is empty for an empty mask and one point for one pixel', () => {
  expect(outerOutline(cv, drawMask('...'))).toEqual([]);
  expect(outerOutline(cv, drawMask('.#.'))).toEqual([[0, 1]]);
});
