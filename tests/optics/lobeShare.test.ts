import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lobeShare } from '../../src/optics/lobeShare';
import grid from '../golden/lobeGrid.json';
import golden from '../golden/optics.json';

it('is 1 / (1 + q²) at the center', () => {
  expect(lobeShare(0, 0.5)).toBeCloseTo(0.8, 14);
  expect(lobeShare(0, 3)).toBeCloseTo(0.1, 14);
});

it('is the integral of the GGX density over the disc', () => {
  // tests/golden/optics.json: SciPy dblquad.
  for (const [v, q, share] of golden.lobeShare.rows as [number, number, number][]) {
    expect(Math.abs(lobeShare(v, q) - share)).toBeLessThan(golden.tolerance.lobeShare);
  }
});

it('agrees with numeric integration from the center to far outside, from near-mirror to matte', () => {
  // tests/golden/lobeGrid.json: SciPy quad over the disc, line by line; 12 roughnesses at 14 distances.
  expect(grid.disc.length).toBe(12 * 14);
  for (const [v, q, share] of grid.disc as [number, number, number][]) {
    expect(Math.abs(lobeShare(v, q) - share)).toBeLessThan(grid.tolerance);
  }
});

const distance = fc.double({ min: 0, max: 50, noNaN: true });
const roughness = fc.double({ min: 1e-3, max: 100, noNaN: true });

it('never rises away from the center', () => {
  fc.assert(
    fc.property(distance, distance, roughness, (v, w, q) => {
      expect(lobeShare(Math.max(v, w), q)).toBeLessThanOrEqual(lobeShare(Math.min(v, w), q) + 1e-15);
    }),
  );
});

it('is the same on both sides of the center', () => {
  fc.assert(
    fc.property(distance, roughness, (v, q) => {
      expect(lobeShare(-v, q)).toBe(lobeShare(v, q));
    }),
  );
});

it('keeps the light: the shares add up to the area of the disc', () => {
  for (const q of [0.05, 0.5, 2]) {
    let total = 0;
    for (let place = 0.5; place < 4000; place++) {
      const p = place / 4000;
      const v = p / (1 - p);
      total += (2 * Math.PI * v * lobeShare(v, q)) / (4000 * (1 - p) ** 2);
    }
    expect(Math.abs(total / Math.PI - 1)).toBeLessThan(2e-3);
  }
});

it('becomes a sharp disc as the roughness vanishes', () => {
  expect(lobeShare(0.99, 1e-6)).toBeCloseTo(1, 6);
  expect(lobeShare(1, 1e-6)).toBeCloseTo(0.5, 6);
  expect(lobeShare(1.01, 1e-6)).toBeCloseTo(0, 6);
});

it('keeps its digits far outside the lamp', () => {
  // Far from the disc the density is constant over it: q² / v⁴.
  expect(lobeShare(1000, 0.01) / (1e-4 / 1e12)).toBeCloseTo(1, 5);
});
