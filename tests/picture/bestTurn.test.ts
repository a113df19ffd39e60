import { expect, it } from 'vitest';
import { SILHOUETTE_DIRECTIONS, silhouette, turnedApart } from '../../src/measure/silhouette';
import { bestTurn } from '../../src/picture/bestTurn';
import { inventedReport } from '../helpers/inventedReport';

const outlines = inventedReport(12).stones.map(({ outline }) => outline);

/** Turns an outline clockwise as seen in the picture: rows run down. */
function turned(outline: readonly (readonly [number, number])[], deg: number) {
  const [cos, sin] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
  return outline.map(([row, column]): [number, number] => [
    row * cos + column * sin,
    column * cos - row * sin,
  ]);
}

it('finds the turn that a shape was turned back by, to a degree', () => {
  for (const outline of outlines) {
    for (const deg of [0, 37, 90.5, 163, -122]) {
      const { turnDeg, apart } = bestTurn(silhouette(outline), silhouette(turned(outline, -deg)));
      expect(Math.abs(((turnDeg - deg + 540) % 360) - 180)).toBeLessThan(1);
      expect(apart).toBeLessThan(0.02);
    }
  }
});

it('turns a single bump over to the place of the other', () => {
  const bump = (at: number) => Array.from({ length: SILHOUETTE_DIRECTIONS }, (_, k) => (k === at ? 1.3 : 1));
  expect(bestTurn(bump(10), bump(4))).toEqual({ turnDeg: 30, apart: 0 });
  expect(bestTurn(bump(4), bump(10))).toEqual({ turnDeg: -30, apart: 0 });
});

it('leaves as much apart as `turnedApart` says', () => {
  const [a, b] = [silhouette(outlines[0]!), silhouette(outlines[5]!)];
  expect(bestTurn(a, b).apart).toBeCloseTo(turnedApart(a, b), 12);
});

it('leaves a circle as it lies', () => {
  const circle = new Array<number>(SILHOUETTE_DIRECTIONS).fill(1);
  expect(bestTurn(circle, circle)).toEqual({ turnDeg: 0, apart: 0 });
});

it('refuses silhouettes that do not compare', () => {
  expect(() => bestTurn([1, 1], [1])).toThrow('Silhouettes of 2 and 1 directions do not compare.');
  expect(() => bestTurn([], [])).toThrow(RangeError);
});
