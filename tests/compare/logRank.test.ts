import { expect, it } from 'vitest';
import { logRank } from '../../src/compare/logRank';
import { normalTail } from '../../src/compare/normalTail';
import type { Stay } from '../../src/compare/stay';
import { TREATED, UNTREATED } from './remission';

it('tells the remission times apart as surely as published', () => {
  // χ² = 16.79 with one degree of freedom: Kleinbaum & Klein, Survival Analysis, chapter 2 (16.793); from memory.
  const { odds, lean } = logRank(TREATED, UNTREATED);
  expect(odds / (2 * normalTail(Math.sqrt(16.793)))).toBeCloseTo(1, 2);
  // Nine left where 19.25 were expected, same source.
  expect(lean.toFixed(2)).toBe('10.25');
});

it('says the same of groups that change places, leaning the other way', () => {
  const there = logRank(TREATED, UNTREATED);
  const back = logRank(UNTREATED, TREATED);
  expect(back.odds).toBeCloseTo(there.odds, 14);
  expect(back.lean).toBeCloseTo(-there.lean, 12);
});

it('keeps what was given up among those that could leave', () => {
  const left = (times: readonly number[]): Stay[] => times.map((time) => ({ time, end: 'left' }));
  const givenUp: Stay[] = Array.from({ length: 20 }, () => ({ time: 0, end: 'given up' }));
  const times = [1, 2, 3, 4, 5, 6];
  expect(logRank(left(times), left(times)).odds).toBe(1);
  expect(logRank([...left(times), ...givenUp], left(times)).odds).toBeLessThan(0.001);
});

it('finds nothing where none has left', () => {
  expect(logRank([{ time: 4, end: 'waiting' }], [{ time: 2, end: 'waiting' }])).toEqual({ odds: 1, lean: 0 });
});
