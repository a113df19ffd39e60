import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type HazeAngleDeg, hazeUnits } from '../../src/optics/hazeUnits';
import golden from '../golden/glossIntegral.json';

it('is none on a perfect polish', () => {
  expect(hazeUnits(0, 1.54, 20)).toBeCloseTo(0, 8);
  expect(hazeUnits(0, 1.54, 30)).toBeCloseTo(0, 8);
});

it('is what the windows beside the mirrored ray receive', () => {
  // tests/golden/glossIntegral.json: SciPy, each window integrated by itself.
  for (const [alpha, n, angleDeg, haze] of golden.hazeUnits.rows as [
    number,
    number,
    HazeAngleDeg,
    number,
  ][]) {
    expect(Math.abs(hazeUnits(alpha, n, angleDeg) - haze)).toBeLessThan(golden.tolerance.hazeUnits);
  }
});

it('rises as a mirror roughens and falls again once the light is spread wide', () => {
  // The angle of the windows is reached by slopes of about 1° at roughness 0.01 to 0.02: the highest haze.
  for (const angleDeg of [20, 30] as const) {
    fc.assert(
      fc.property(fc.double({ min: 1.01, max: 2, noNaN: true }), (factor) => {
        for (const alpha of [0.0005, 0.001, 0.002, 0.004]) {
          expect(hazeUnits(alpha * factor, 1.54, angleDeg)).toBeGreaterThan(hazeUnits(alpha, 1.54, angleDeg));
        }
        for (const alpha of [0.03, 0.06, 0.12, 0.24]) {
          expect(hazeUnits(alpha * factor, 1.54, angleDeg)).toBeLessThan(hazeUnits(alpha, 1.54, angleDeg));
        }
      }),
    );
  }
});

it('is higher the more the mineral mirrors', () => {
  expect(hazeUnits(0.01, 1.77, 20)).toBeGreaterThan(hazeUnits(0.01, 1.43, 20));
});

it('refuses a negative roughness', () => {
  expect(() => hazeUnits(-1, 1.54, 20)).toThrow('The roughness must lie in 0 to 1, not -1.');
});
