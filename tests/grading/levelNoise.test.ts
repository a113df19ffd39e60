import { expect, it } from 'vitest';
import { type LevelNoise, lnLikelihood } from '../../src/grading/levelNoise';

/** The same integral by the trapezoid rule. */
function bySum(offs: readonly number[], { kept, fresh }: LevelNoise): number {
  let sum = 0;
  for (let z = -8; z <= 8; z += 0.001) {
    const normal = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    sum +=
      0.001 *
      normal *
      offs.reduce((all, off) => all * (1 + (off - kept * z) ** 2 / (2 * fresh ** 2)) ** -1.5, 1);
  }
  return Math.log(sum);
}

it('integrates the shift that all readings share', () => {
  const noise = { kept: 0.2, fresh: 0.07 };
  for (const offs of [
    [0.02, -0.05, 0.08, 0.01, -0.03, 0.04],
    [0.3, 0.25, 0.33, 0.28],
    [-0.21, -0.19, -1.2, -0.25, -0.18, -0.24, -0.16],
  ]) {
    expect(Math.abs(lnLikelihood(offs, noise) - bySum(offs, noise))).toBeLessThan(0.3);
  }
});

it("is that of Student's t with two degrees of freedom where nothing is kept", () => {
  // (1 + 2² / 2)^(−3/2) at two scales off: 3^−1.5.
  expect(lnLikelihood([0.2], { kept: 0, fresh: 0.1 })).toBeCloseTo(-1.5 * Math.log(3), 12);
});

it('holds a shift of all readings against a law far less than readings that scatter', () => {
  const noise = { kept: 0.2, fresh: 0.05 };
  expect(lnLikelihood([0.2, 0.2, 0.2, 0.2], noise)).toBeGreaterThan(
    lnLikelihood([0.2, -0.2, 0.2, -0.2], noise) + 4,
  );
});

it('forgives one reading that is far off', () => {
  const noise = { kept: 0.2, fresh: 0.05 };
  const fall = lnLikelihood([0, 0, 0, 0, 0], noise) - lnLikelihood([0, 0, -1.5, 0, 0], noise);
  // Under a normal distribution of that scale it would be 450.
  expect(fall).toBeGreaterThan(5);
  expect(fall).toBeLessThan(12);
});
