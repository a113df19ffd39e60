import { expect, it } from 'vitest';
import { leaving, timeUntil } from '../../src/compare/leaving';
import type { Stay } from '../../src/compare/stay';
import { TREATED } from './remission';

it('adds an even share for each that leaves when none waits', () => {
  const stays: Stay[] = [3, 1, 2, 2].map((time) => ({ time, end: 'left' }));
  expect(leaving(stays)).toEqual([
    { time: 1, share: 0.25 },
    { time: 2, share: 0.75 },
    { time: 3, share: 1 },
  ]);
});

it('gives the Kaplan–Meier estimate of the remission times, and their median of 23 weeks', () => {
  // Kalbfleisch & Prentice, The Statistical Analysis of Failure Time Data, chapter 1, from memory; the same as
  // products of (1 − d / n) by hand: 18/21 · 16/17 · 14/15 · 11/12 · 10/11 · 6/7 · 5/6.
  const steps = leaving(TREATED);
  const still = steps.map(({ time, share }) => `${time}: ${(1 - share).toFixed(3)}`);
  expect(still).toEqual([
    '6: 0.857',
    '7: 0.807',
    '10: 0.753',
    '13: 0.690',
    '16: 0.627',
    '22: 0.538',
    '23: 0.448',
  ]);
  expect(timeUntil(steps, 0.5)).toBe(23);
});

it('counts what was given up as never leaving', () => {
  const stays: Stay[] = [
    { time: 1, end: 'given up' },
    { time: 2, end: 'left' },
    { time: 3, end: 'given up' },
    { time: 4, end: 'left' },
  ];
  // 3/4 still there after the first; a third of them leaves at 2, a quarter of all; the last quarter at 4.
  expect(leaving(stays).at(-1)?.share).toBeCloseTo(0.5, 14);
  expect(timeUntil(leaving(stays), 0.5)).toBe(4);
});

it('does not say when a share left that never did', () => {
  expect(timeUntil(leaving(TREATED), 0.75)).toBeNull();
});
