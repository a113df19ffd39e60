import { expect, it } from 'vitest';
import { markLength } from '../../src/measure/markLength';
import { shareMarks } from '../../src/measure/shareMarks';

const map = (rows: readonly (readonly number[])[]) => ({
  shares: Float32Array.from(rows.flat()),
  mask: { width: rows[0]!.length, height: rows.length, data: new Uint8Array(rows.flat().length).fill(1) },
});

it('takes places that touch at a corner for one mark, and keeps those with a high enough peak', () => {
  const { shares, mask } = map([
    [0.9, 0, 0, 0, 0.4],
    [0, 0.6, 0, 0, 0.4],
    [0, 0, 0, 0, 0],
  ]);
  const marks = shareMarks(shares, mask, 0.3, 0.5);
  expect(marks.map(({ places }) => places)).toEqual([[0, 6]]);
  expect(marks[0]!.peak).toBeCloseTo(0.75);
});

it('leaves out what lies outside the stone', () => {
  const { shares, mask } = map([[0.9, 0.9, 0.9]]);
  mask.data[1] = 0;
  expect(shareMarks(shares, mask, 0.3, 0.5)).toHaveLength(2);
});

it('measures a bent line along itself', () => {
  const width = 8;
  const places = [0, 1, 2, 3, 4, 12, 20, 28].map((place) => place);
  const { length, way } = markLength(places, width);
  // Four steps right, one of them diagonal into the column that goes down, then two down, and the last place itself.
  expect(length).toBeCloseTo(3 + Math.SQRT2 + 2 + 1);
  expect([way[0], way[way.length - 1]].sort((a, b) => a! - b!)).toEqual([0, 28]);
});
