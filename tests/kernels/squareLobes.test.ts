import fc from 'fast-check';
import { expect, it } from 'vitest';
import { squareLobes } from '../../src/kernels/lobeKernels';
import { lobeShare } from '../../src/optics/lobeShare';
import grid from '../golden/lobeGrid.json';
import golden from '../golden/squareLobe.json';

/**
 * Of the arctangent 4·10⁻⁸: 2 Σ (√2 − 1)ᵏ / k over the terms that are left out, from k = 17 on; the rest is the rounding of
 * 32-bit floats, half of 2⁻²³ for each of some twenty operations on numbers up to one.
 */
const EXACT_TO = 1.2e-6;

function shareAt(x: number, y: number, alphaOverA: number, turnRad = 0): number {
  const into = new Float32Array(1);
  squareLobes(Float32Array.of(x), Float32Array.of(y), turnRad, alphaOverA, into);
  return into[0]!;
}

it('agrees with numeric integration over the square', () => {
  // Source: tests/golden/squareLobe.json, SciPy dblquad.
  for (const { x, y, alphaOverA, share } of golden.cases) {
    expect(Math.abs(shareAt(x, y, alphaOverA) - share)).toBeLessThan(golden.tolerance + EXACT_TO);
  }
});

it('agrees with numeric integration over the whole grid of places and roughnesses', () => {
  // tests/golden/lobeGrid.json: SciPy quad over the square, line by line; 12 roughnesses at 36 places.
  expect(grid.square.length).toBe(12 * 36);
  for (const [x, y, q, share] of grid.square as [number, number, number, number][]) {
    expect(Math.abs(shareAt(x, y, q) - share)).toBeLessThan(grid.tolerance + EXACT_TO);
  }
});

it('turns the square as far as told', () => {
  for (const turn of [0.1, 0.7, 1.4]) {
    const along = Math.cos(turn) * 0.6 + Math.sin(turn) * 0.9;
    const across = Math.cos(turn) * 0.9 - Math.sin(turn) * 0.6;
    expect(shareAt(0.6, 0.9, 0.2, turn)).toBeCloseTo(shareAt(along, across, 0.2), 6);
  }
});

it('is nearly 1 inside and nearly 0 outside the square for a near-mirror', () => {
  expect(shareAt(0.8, 0.8, 0.002)).toBeGreaterThan(0.99);
  expect(shareAt(1, 0, 0.002)).toBeLessThan(0.01);
});

it('cannot be told from the disc of equal area when the lobe is wide', () => {
  expect(shareAt(3, 2, 12)).toBeCloseTo(lobeShare(Math.hypot(3, 2), 12), 5);
});

it('is the same on all eight sides of the center', () => {
  const place = fc.double({ min: -3, max: 3, noNaN: true });
  fc.assert(
    fc.property(place, place, fc.double({ min: 0.01, max: 5, noNaN: true }), (x, y, q) => {
      const share = shareAt(x, y, q);
      expect(shareAt(-x, y, q)).toBeCloseTo(share, 5);
      expect(shareAt(y, x, q)).toBeCloseTo(share, 5);
    }),
  );
});
