import fc from 'fast-check';
import { expect, it } from 'vitest';
import { moved, rigidMatch, type SizedPoint } from '../../src/measure/rigidMatch';

const TRAY: SizedPoint[] = [
  { x: 20, y: 30, areaMm2: 400 },
  { x: 70, y: 22, areaMm2: 310 },
  { x: 45, y: 80, areaMm2: 520 },
  { x: 110, y: 66, areaMm2: 250 },
  { x: 130, y: 18, areaMm2: 610 },
];

it('finds any turn and shift again', () => {
  const turns = fc.double({ min: -3.1, max: 3.1, noNaN: true });
  const shifts = fc.double({ min: -40, max: 40, noNaN: true });
  fc.assert(
    fc.property(turns, shifts, shifts, (turnRad, right, down) => {
      const move = { turnRad, right, down };
      const there = TRAY.map((point) => ({ ...point, ...moved(move, point) })).reverse();
      const found = rigidMatch(TRAY, there)!;
      expect(found.pairs).toHaveLength(5);
      for (const point of TRAY) {
        const [a, b] = [moved(found, point), moved(move, point)];
        expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeLessThan(1e-6);
      }
    }),
    { numRuns: 60 },
  );
});

it('does without a stone that was taken away, and with places half a millimeter off', () => {
  const there = TRAY.slice(1).map((point, i) => ({ ...point, x: point.x + 5 + (i % 2 ? 0.5 : -0.5) }));
  const found = rigidMatch(TRAY, there)!;
  expect(found.pairs.map(([i]) => i).sort()).toEqual([1, 2, 3, 4]);
  expect(found.right).toBeGreaterThan(3.5);
  expect(found.right).toBeLessThan(6.5);
});

it('says nothing of another tray', () => {
  const other = TRAY.map((point, i) => ({
    ...point,
    x: 31 * i,
    y: (47 * i * i) % 90,
    areaMm2: 900 - 90 * i,
  }));
  expect(rigidMatch(TRAY, other)).toBeNull();
});
