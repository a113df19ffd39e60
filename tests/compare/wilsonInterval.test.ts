import { expect, it } from 'vitest';
import { wilsonInterval } from '../../src/compare/wilsonInterval';
import golden from '../golden/compare.json';

it('gives the intervals printed in Newcombe 1998', () => {
  // Statistics in Medicine 17, 857–872, table I, method 3: score interval without continuity correction.
  const printed = [
    [81, 263, '0.2553', '0.3662'],
    [15, 148, '0.0624', '0.1605'],
    [0, 20, '0.0000', '0.1611'],
    [1, 29, '0.0061', '0.1718'],
  ] as const;
  for (const [hits, count, low, high] of printed) {
    expect(wilsonInterval(hits, count).map((end) => end.toFixed(4))).toEqual([low, high]);
  }
});

it('agrees with SciPy', () => {
  for (const { hits, count, ends } of golden.wilson) {
    wilsonInterval(hits, count).forEach((end, place) => {
      expect(Math.abs(end - ends[place]!)).toBeLessThan(golden.tolerance);
    });
  }
});

it('mirrors when hits and misses change places', () => {
  const [low, high] = wilsonInterval(3, 11);
  const mirrored = wilsonInterval(8, 11);
  expect(mirrored[0]).toBeCloseTo(1 - high, 12);
  expect(mirrored[1]).toBeCloseTo(1 - low, 12);
});

it('refuses more hits than there were, and a count of nothing', () => {
  expect(() => wilsonInterval(4, 3)).toThrow('A share needs 0 to 3 hits of at least 1, not 4.');
  expect(() => wilsonInterval(0, 0)).toThrow(RangeError);
});
