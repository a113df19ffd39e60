import { expect, it } from 'vitest';
import { openOpenCv } from '../../src/vision/openCv';
import { smallestRectangle } from '../../src/vision/smallestRectangle';
import { golden } from '../helpers/openCvGolden';

const cv = await openOpenCv();

/** Corners of a rectangle of 20 by 8 pixels whose longer side is turned clockwise on the screen. */
function turned(angleRad: number): [row: number, column: number][] {
  const [along, across] = [10, 4];
  return [
    [1, 1],
    [1, -1],
    [-1, -1],
    [-1, 1],
  ].map(([u = 0, v = 0]) => [
    50 + u * along * Math.sin(angleRad) + v * across * Math.cos(angleRad),
    60 + u * along * Math.cos(angleRad) - v * across * Math.sin(angleRad),
  ]);
}

it('measures an upright rectangle', () => {
  const standing = smallestRectangle(cv, [
    [0, 0],
    [0, 4],
    [9, 4],
    [9, 0],
  ]);
  expect(standing.lengthPx).toBeCloseTo(9, 5);
  expect(standing.widthPx).toBeCloseTo(4, 5);
  expect(standing.angleRad).toBeCloseTo(Math.PI / 2, 5);
});

it.each([-80, -45, -10, 0, 10, 35, 60, 89])('finds a rectangle turned by %i°', (deg) => {
  const angleRad = (deg * Math.PI) / 180;
  const found = smallestRectangle(cv, turned(angleRad));
  expect(found.lengthPx).toBeCloseTo(20, 3);
  expect(found.widthPx).toBeCloseTo(8, 3);
  expect(found.angleRad).toBeCloseTo(angleRad, 4);
});

// Source: OpenCV 4.6, tests/golden/opencv.py.
it("gives OpenCV's own sides around scattered points", () => {
  const found = smallestRectangle(
    cv,
    golden.points.map(([row = 0, column = 0]) => [row, column] as const),
  );
  expect(found.lengthPx).toBeCloseTo(golden.smallestRectangle.lengthPx, 4);
  expect(found.widthPx).toBeCloseTo(golden.smallestRectangle.widthPx, 4);
});

it('has no size around one point, and refuses none', () => {
  expect(smallestRectangle(cv, [[3, 4]])).toMatchObject({ lengthPx: 0, widthPx: 0 });
  expect(() => smallestRectangle(cv, [])).toThrow('No rectangle can be laid around no points.');
});
