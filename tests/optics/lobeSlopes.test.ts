import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lobeShare } from '../../src/optics/lobeShare';
import { lobeSlopes } from '../../src/optics/lobeSlopes';

it('is flat at the center, where roughness takes 2q / (1 + q²)²', () => {
  // By hand from f(0) = 1 / (1 + q²) at q = 1.
  expect(lobeSlopes(0, 1).byDistance).toBeCloseTo(0, 15);
  expect(lobeSlopes(0, 1).byRoughness).toBeCloseTo(-0.5, 14);
});

it('is what small steps of the lobe give', () => {
  const step = 1e-6;
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 5, noNaN: true }),
      fc.double({ min: 0.05, max: 5, noNaN: true }),
      (v, q) => {
        const { byDistance, byRoughness } = lobeSlopes(v, q);
        expect(byDistance).toBeCloseTo((lobeShare(v + step, q) - lobeShare(v - step, q)) / (2 * step), 5);
        expect(byRoughness).toBeCloseTo((lobeShare(v, q + step) - lobeShare(v, q - step)) / (2 * step), 5);
      },
    ),
  );
});
