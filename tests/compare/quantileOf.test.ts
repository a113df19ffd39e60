import { expect, it } from 'vitest';
import { quantileOf } from '../../src/compare/quantileOf';

it('takes the middle value, and between two values the point between', () => {
  expect(quantileOf([1, 2, 9], 0.5)).toBe(2);
  expect(quantileOf([1, 2, 4, 9], 0.5)).toBe(3);
  expect(quantileOf([1, 2, 4, 9], 0.25)).toBe(1.75);
});

it('keeps infinity where half of the values are infinite', () => {
  expect(quantileOf([1, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY], 0.75)).toBe(
    Number.POSITIVE_INFINITY,
  );
});

it('has no value without values', () => {
  expect(quantileOf([], 0.5)).toBeNaN();
});
