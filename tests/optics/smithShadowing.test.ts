import fc from 'fast-check';
import { expect, it } from 'vitest';
import { smithShadowing } from '../../src/optics/smithShadowing';

it('is 2 / (1 + √(1 + α² tan² θ))', () => {
  // Walter et al. 2007, eq. 34, at 60 degrees and α = 1: 2 / (1 + 2).
  expect(smithShadowing(0.5, 1)).toBeCloseTo(2 / 3, 12);
});

it('hides nothing head-on or on a smooth surface', () => {
  expect(smithShadowing(1, 0.7)).toBe(1);
  expect(smithShadowing(0.2, 0)).toBe(1);
});

it('hides more the rougher the surface', () => {
  const share = fc.double({ min: 0.01, max: 1, noNaN: true });
  fc.assert(
    fc.property(share, share, share, (cosTheta, a, b) => {
      expect(smithShadowing(cosTheta, Math.max(a, b))).toBeLessThanOrEqual(
        smithShadowing(cosTheta, Math.min(a, b)),
      );
    }),
  );
});
