import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lobeShare } from '../../src/optics/lobeShare';
import { squareLobeShare } from '../../src/optics/squareLobeShare';
import grid from '../golden/lobeGrid.json';
import golden from '../golden/squareLobe.json';

it('agrees with numeric integration over the square', () => {
  // Source: tests/golden/squareLobe.json, SciPy dblquad.
  for (const { x, y, alphaOverA, share } of golden.cases) {
    expect(Math.abs(squareLobeShare(x, y, alphaOverA) - share)).toBeLessThan(golden.tolerance);
  }
});

it('agrees with numeric integration over the whole grid of places and roughnesses', () => {
  // tests/golden/lobeGrid.json: SciPy quad over the square, line by line; 12 roughnesses at 36 places.
  expect(grid.square.length).toBe(12 * 36);
  for (const [x, y, q, share] of grid.square as [number, number, number, number][]) {
    expect(Math.abs(squareLobeShare(x, y, q) - share)).toBeLessThan(grid.tolerance);
  }
});

it('is nearly 1 inside and nearly 0 outside the square for a near-mirror', () => {
  expect(squareLobeShare(0.8, 0.8, 0.002)).toBeGreaterThan(0.99);
  expect(squareLobeShare(1, 0, 0.002)).toBeLessThan(0.01);
});

it('cannot be told from the disc of equal area when the lobe is wide', () => {
  expect(squareLobeShare(3, 2, 12)).toBeCloseTo(lobeShare(Math.hypot(3, 2), 12), 5);
});

it('is the same on all eight sides of the center', () => {
  const place = fc.double({ min: -3, max: 3, noNaN: true });
  fc.assert(
    fc.property(place, place, fc.double({ min: 0.01, max: 5, noNaN: true }), (x, y, q) => {
      const share = squareLobeShare(x, y, q);
      expect(squareLobeShare(-x, y, q)).toBeCloseTo(share, 10);
      expect(squareLobeShare(y, x, q)).toBeCloseTo(share, 10);
    }),
  );
});
