import fc from 'fast-check';
import { expect, it } from 'vitest';
import { roughnessSpread } from '../../src/grading/roughnessSpread';

const lamp = { sourceSlope: 0.05, blurMm: 0.05, radiusMm: 10 };

// Without an edge to read, only the height is left: at α = a its error of 5 % becomes 5 %·(1 + 1)/2.
it('is the error of the height at a blur that hides every edge', () => {
  expect(roughnessSpread(0.05, { ...lamp, blurMm: 1000 })).toBeCloseTo(0.05, 6);
});

// Under a lamp that fills the sky only the edge is left: 25 % of (0.05/10)² over 0.01².
it('is the error of the edge under an endless lamp', () => {
  expect(roughnessSpread(0.01, { ...lamp, sourceSlope: 1e4 })).toBeCloseTo(0.0625, 6);
});

// The closed form f(0) = a²/(a² + α²) and its slope, taken from differences here.
it('follows the height of the highlight', () => {
  const height = (alpha: number) => 0.05 ** 2 / (0.05 ** 2 + alpha ** 2);
  const slope = (Math.log(height(0.0201)) - Math.log(height(0.0199))) / Math.log(0.0201 / 0.0199);
  expect(roughnessSpread(0.02, { ...lamp, blurMm: 1000 })).toBeCloseTo(0.05 / -slope, 4);
});

it('law: a smaller lamp, a sharper photo and a rougher stone never make it larger', () => {
  const positive = fc.double({ min: 0.002, max: 0.5, noNaN: true });
  const share = fc.double({ min: 0.1, max: 1, noNaN: true });
  fc.assert(
    fc.property(positive, positive, positive, share, (alpha, sourceSlope, blurMm, part) => {
      const spread = roughnessSpread(alpha, { sourceSlope, blurMm, radiusMm: 10 });
      const slack = spread * (1 + 1e-9);
      expect(
        roughnessSpread(alpha, { sourceSlope: part * sourceSlope, blurMm, radiusMm: 10 }),
      ).toBeLessThanOrEqual(slack);
      expect(
        roughnessSpread(alpha, { sourceSlope, blurMm: part * blurMm, radiusMm: 10 }),
      ).toBeLessThanOrEqual(slack);
      expect(roughnessSpread(alpha / part, { sourceSlope, blurMm, radiusMm: 10 })).toBeLessThanOrEqual(slack);
    }),
  );
});

it('refuses a roughness of zero', () => {
  expect(() => roughnessSpread(0, lamp)).toThrow('Roughness, lamp size and stone radius must be positive.');
});
