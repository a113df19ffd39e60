import { expect, it } from 'vitest';
import golden from '../golden/measure.json';
import { rankCorrelation } from './rankCorrelation';

it('is one for the same order and minus one for the opposite, however uneven the steps', () => {
  expect(rankCorrelation([1, 2, 3, 40], [0.1, 5, 6, 7])).toBeCloseTo(1, 12);
  expect(rankCorrelation([1, 2, 3, 40], [7, 6, 5, 0.1])).toBeCloseTo(-1, 12);
});

it('is 1 − 6 Σd² / (n (n² − 1)) without equal values', () => {
  // d = 1, −1, 0, 0 for n = 4: 1 − 12 / 60.
  expect(rankCorrelation([1, 2, 3, 4], [2, 1, 3, 4])).toBeCloseTo(0.8, 12);
});

// Source: SciPy 1.10 stats.spearmanr, without and with ties, tests/golden/measure.py.
it("gives SciPy's values", () => {
  for (const [a, b, spearman] of golden.ranks.rows as [number[], number[], number][]) {
    expect(Math.abs(rankCorrelation(a, b) - spearman)).toBeLessThan(golden.tolerance.rank);
  }
});

it('is no number when there is nothing to rank', () => {
  expect(rankCorrelation([], [])).toBeNaN();
  expect(rankCorrelation([1], [2])).toBeNaN();
});
