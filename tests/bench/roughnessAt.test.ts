import { expect, it } from 'vitest';
import { glossOf } from '../../src/grading/gloss';
import { roughnessAt } from './roughnessAt';

const knot = (n: number, alpha: number) => ({ n, alpha, alphaLow: alpha / 2, alphaHigh: 2 * alpha });
const byIndex = [knot(1.43, 0.1), knot(1.6, 0.2), knot(1.77, 0.4)];

it('is the knot at a knot, the geometric mean halfway, and held beyond the ends', () => {
  expect(roughnessAt(byIndex, 1.6).alpha).toBeCloseTo(0.2, 12);
  expect(roughnessAt(byIndex, 1.685).alpha).toBeCloseTo(Math.sqrt(0.08), 12);
  expect(roughnessAt(byIndex, 1.3).alpha).toBeCloseTo(0.1, 12);
  expect(roughnessAt(byIndex, 2).alphaHigh).toBeCloseTo(0.8, 12);
});

it('agrees with the grading', () => {
  expect(roughnessAt(byIndex, 1.54).alpha).toBeCloseTo(glossOf(byIndex, null).alpha, 12);
});
