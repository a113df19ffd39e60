import { expect, it } from 'vitest';
import { lowerInverse, tSpread } from '../../src/measure/tSpread';

it('inverts the factor of a covariance', () => {
  // L = [[2], [1, 3], [4, 5, 6]]; C = L Lᵀ; ln det C = 2 ln(2 · 3 · 6).
  const { inverse, logDeterminant } = lowerInverse([4, 0, 0, 2, 10, 0, 8, 19, 77]);
  const l = [2, 0, 0, 1, 3, 0, 4, 5, 6];
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) {
      const product = [0, 1, 2].reduce((sum, k) => sum + inverse[3 * i + k]! * l[3 * k + j]!, 0);
      expect(product).toBeCloseTo(i === j ? 1 : 0, 12);
    }
  }
  expect(logDeterminant).toBeCloseTo(2 * Math.log(36), 12);
});

it('gives an outlier a low weight and a missing sample none', () => {
  const residuals = Float64Array.from({ length: 90 }, (_, k) => 0.1 * Math.sin(1 + 7.3 * k * k));
  residuals.set([3, 3, -3], 0);
  residuals.set([0, 0, 0], 3);
  const weights = new Float64Array(30).fill(1);
  tSpread(residuals, weights, 4);
  expect(weights[0]!).toBeLessThan(0.3);
  expect(weights[1]).toBe(0);
  expect(Math.min(...weights.slice(2))).toBeGreaterThan(0.4);
});

it('grows with the residuals by the scale of a density: 6 ln of the factor a sample', () => {
  const residuals = Float64Array.from({ length: 150 }, (_, k) => 0.1 * Math.sin(1 + 7.3 * k * k));
  const cost = (factor: number) =>
    tSpread(
      residuals.map((r) => factor * r),
      new Float64Array(50).fill(1),
      4,
    ).minusTwoLogLikelihood;
  expect(cost(2) - cost(1)).toBeCloseTo(50 * 6 * Math.log(2), 0);
});
