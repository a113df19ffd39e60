import { expect, it } from 'vitest';
import { exactRankSum } from '../../src/compare/exactRankSum';

it('is the share of arrangements: two of the twenty of three and three when all lie apart', () => {
  expect(exactRankSum(0, 3, 3)).toBeCloseTo(2 / 20, 14);
});

it('gives the critical value printed for eight and eight', () => {
  // Mann & Whitney's U at two-sided 5 %, n₁ = n₂ = 8: 13. Any textbook's table; from memory.
  expect(exactRankSum(13, 8, 8)).toBeLessThanOrEqual(0.05);
  expect(exactRankSum(14, 8, 8)).toBeGreaterThan(0.05);
});

it('does not mind which sample is the smaller', () => {
  expect(exactRankSum(7, 4, 9)).toBeCloseTo(exactRankSum(7, 9, 4), 14);
});

it('is certain where the ranks are even', () => {
  expect(exactRankSum(2, 2, 2)).toBe(1);
});
