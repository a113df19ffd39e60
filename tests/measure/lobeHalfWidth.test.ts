import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lobeHalfWidth } from '../../src/measure/lobeHalfWidth';
import { discLobe } from '../../src/optics/discLobe';

it("is the lamp's own radius for a mirror", () => {
  expect(lobeHalfWidth(1e-4, 0.05)).toBeCloseTo(0.05, 6);
});

it('is α √(√2 − 1) for a lamp much smaller than the lobe', () => {
  // The GGX slope density α² / (π (α² + u²)²) halves where (1 + u²/α²)² = 2 (Walter et al. 2007, eq. 33).
  expect(lobeHalfWidth(0.2, 0.001) / 0.2).toBeCloseTo(Math.sqrt(Math.SQRT2 - 1), 4);
});

const size = fc.double({ min: 0.002, max: 0.8, noNaN: true });

it('is where the lobe has half its height', () => {
  fc.assert(
    fc.property(size, size, (alpha, a) => {
      const half = discLobe(lobeHalfWidth(alpha, a), alpha, a);
      expect(half / discLobe(0, alpha, a)).toBeCloseTo(0.5, 6);
    }),
  );
});

it('is what solving for half the height gives', () => {
  // With q = α/a: ½ (1 − t/h) = ½ / (1 + q²), h² = t² + 4q², t = q² + v² − 1 is solved by v² = 1 − q² + 2q³ / √(1 + 2q²).
  fc.assert(
    fc.property(size, size, (alpha, a) => {
      const q = alpha / a;
      const v = Math.sqrt(1 - q * q + (2 * q ** 3) / Math.sqrt(1 + 2 * q * q));
      expect(lobeHalfWidth(alpha, a) / (a * v)).toBeCloseTo(1, 6);
    }),
  );
});

it('widens with the roughness of any lobe wider than half the lamp', () => {
  fc.assert(
    fc.property(size, size, (alpha, a) => {
      fc.pre(alpha > 0.5 * a);
      expect(lobeHalfWidth(1.1 * alpha, a)).toBeGreaterThan(lobeHalfWidth(alpha, a));
    }),
  );
});
