import { expect, it } from 'vitest';
import { quantile } from './quantile';

it('is the middle value, or halfway between the two middle ones', () => {
  expect(quantile([9, 1, 5], 0.5)).toBe(5);
  expect(quantile([4, 1, 3, 2], 0.5)).toBe(2.5);
});

// Source: NumPy 1.24 quantile([2, 3, 5, 7, 11], [0.1, 0.9]), default method.
it("gives NumPy's values", () => {
  expect(quantile([2, 3, 5, 7, 11], 0.1)).toBeCloseTo(2.4, 12);
  expect(quantile([2, 3, 5, 7, 11], 0.9)).toBeCloseTo(9.4, 12);
});

it('is no number without values', () => {
  expect(quantile([], 0.5)).toBeNaN();
});
