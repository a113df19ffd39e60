import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type PosterField, posterRows } from '../../src/picture/posterRows';

const FIELD: PosterField = {
  ...{ left: 100, top: 200, widthPx: 1800, heightPx: 2200, labelPx: 60, gapPx: 50, mostPxPerMm: 30 },
};
const stones = fc.array(
  fc.record({
    widthMm: fc.double({ min: 5, max: 60, noNaN: true }),
    heightMm: fc.double({ min: 5, max: 60, noNaN: true }),
  }),
  { minLength: 1, maxLength: 60 },
);

it('lays two equal stones beside each other in the middle', () => {
  const size = { widthMm: 20, heightMm: 20 };
  const { pxPerMm, seats, heightPx } = posterRows([size, size], FIELD);
  expect(pxPerMm).toBe(30);
  expect(heightPx).toBe(660);
  expect(seats[0]!.y).toBe(seats[1]!.y);
  expect(seats[0]!.x - 100).toBeCloseTo(1900 - seats[1]!.x, 6);
});

it('leaves no stone alone in its row when all are alike', () => {
  const { seats } = posterRows(
    Array.from({ length: 12 }, () => ({ widthMm: 30, heightMm: 30 })),
    FIELD,
  );
  const rows = new Map<number, number>();
  for (const { y } of seats) rows.set(y, (rows.get(y) ?? 0) + 1);
  expect(Math.min(...rows.values())).toBeGreaterThan(1);
});

it('keeps stones and names in the field, apart, in order and to one scale', () => {
  fc.assert(
    fc.property(stones, (sizes) => {
      const { pxPerMm, seats } = posterRows(sizes, FIELD);
      expect(pxPerMm).toBeGreaterThan(0);
      const boxes = seats.map(({ x, y, labelY }, i) => {
        const [width, height] = [sizes[i]!.widthMm * pxPerMm, sizes[i]!.heightMm * pxPerMm];
        return { left: x - width / 2, right: x + width / 2, top: y - height / 2, bottom: labelY + 60 };
      });
      boxes.forEach(({ left, right, top, bottom }, i) => {
        expect(left).toBeGreaterThanOrEqual(100 - 1e-6);
        expect(right).toBeLessThanOrEqual(1900 + 1e-6);
        expect(top).toBeGreaterThanOrEqual(200 - 1e-6);
        expect(bottom).toBeLessThanOrEqual(2400 + 1e-6);
        const next = boxes[i + 1];
        if (next) expect(next.left >= right - 1e-6 || next.top >= bottom - 1e-6).toBe(true);
      });
    }),
    { numRuns: 60 },
  );
});

it('seats nobody in an empty batch', () => {
  expect(posterRows([], FIELD)).toEqual({ pxPerMm: 0, seats: [], heightPx: 0 });
});
