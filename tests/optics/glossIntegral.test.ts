import { expect, it } from 'vitest';
import type { GlossAngleDeg } from '../../src/optics/glossGeometry';
import { glossIntegral } from '../../src/optics/glossIntegral';
import grid from '../golden/glossIntegral.json';
import golden from '../golden/optics.json';

it('is what a plain sum over both apertures gives', () => {
  // tests/golden/optics.json: NumPy midpoint sums, with no change of variables.
  for (const [alpha, n, angleDeg, gloss] of golden.glossUnits.rows as [
    number,
    number,
    GlossAngleDeg,
    number,
  ][]) {
    expect(Math.abs(glossIntegral(alpha, n, angleDeg) - gloss)).toBeLessThan(golden.tolerance.glossUnits);
  }
});

it('agrees with an independent integral over the whole grid of roughness, index and angle', () => {
  // tests/golden/glossIntegral.json: SciPy, Gauss-Legendre over source and receptor, no change of variables.
  const rows = grid.glossUnits.rows as [number, number, GlossAngleDeg, number][];
  const apart = rows.map(([alpha, n, angleDeg, gloss]) =>
    Math.abs(glossIntegral(alpha, n, angleDeg) - gloss),
  );
  expect(rows.length).toBe(3 * 12 * 9);
  expect(Math.max(...apart)).toBeLessThan(grid.tolerance.glossUnits);
});

it('reads 100 on the perfect standard', () => {
  // ISO 2813 / ASTM D523: polished black glass of n = 1.567 is 100 by definition.
  for (const angleDeg of [20, 60, 85] as const)
    expect(glossIntegral(0, 1.567, angleDeg)).toBeCloseTo(100, 12);
});

it('refuses a roughness outside 0 to 1', () => {
  expect(() => glossIntegral(1.5, 1.54, 60)).toThrow('The roughness must lie in 0 to 1, not 1.5.');
  expect(() => glossIntegral(Number.NaN, 1.54, 60)).toThrow('not NaN.');
});
