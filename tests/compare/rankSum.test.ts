import { expect, it } from 'vitest';
import { rankSum } from '../../src/compare/rankSum';
import golden from '../golden/compare.json';

it('counts the arrangements of two pairs that lie apart: two of six', () => {
  const { odds, lean } = rankSum([1, 2], [3, 4]);
  expect(odds).toBeCloseTo(2 / 6, 14);
  expect(lean).toBe(-2);
});

it('agrees with SciPy, by counting and by the normal curve with ties', () => {
  for (const { first, second, odds, method } of golden.rankSums) {
    const apart = Math.abs(rankSum(first, second).odds / odds - 1);
    expect(apart, `${method}, ${first.length} and ${second.length} values`).toBeLessThan(golden.tolerance);
  }
});

it('says the same of two samples that change places, leaning the other way', () => {
  const { first, second } = golden.rankSums[4]!;
  const there = rankSum(first, second);
  const back = rankSum(second, first);
  expect(back.odds).toBe(there.odds);
  expect(back.lean).toBe(-there.lean);
});

it('finds nothing between samples of one single value', () => {
  expect(rankSum([5, 5, 5], [5, 5])).toEqual({ odds: 1, lean: 0 });
});
