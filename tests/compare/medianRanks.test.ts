import { expect, it } from 'vitest';
import { medianRanks } from '../../src/compare/medianRanks';
import golden from '../golden/compare.json';

it('takes the ends of six values, which hold the median unless all fall on one side', () => {
  // 1 − 2 / 2⁶ = 0.969.
  expect(medianRanks(6)).toEqual([1, 6]);
});

it('agrees with ranks from SciPy’s binomial distribution', () => {
  for (const { count, ranks } of golden.medianRanks) expect(medianRanks(count)).toEqual(ranks);
});

it('gives none for five values, whose ends hold the median in 94 % of cases only', () => {
  expect(medianRanks(5)).toBeNull();
});
