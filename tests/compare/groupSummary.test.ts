import { expect, it } from 'vitest';
import { groupSummary } from '../../src/compare/groupSummary';
import type { StoneDigest } from '../../src/history/batchDigest';
import { inventedDigest, inventedDigests, inventedGloss } from './inventedDigest';

const group = (stones: readonly StoneDigest[]) => ({ key: 'k', name: 'Agate', stones });

/** Stones that stayed in coarse for so many weeks. */
const inCoarse = (weeks: readonly number[], said: Partial<StoneDigest> = {}) =>
  inventedDigests(weeks, (time) => ({ coarseDays: 7 * time, ...said }));

it('gives median, half and the median’s interval of gloss', () => {
  const stones = inventedDigests([0.9, 0.6, 0.8, 0.7, 0.5, 1, 0.4], (share) => ({
    gloss: inventedGloss(share),
  }));
  const summary = groupSummary(group(stones), 'gloss');
  expect(summary).toMatchObject({ known: 7, isFew: false, middle: 0.7, sure: [0.4, 1] });
  expect(summary?.half?.[0]).toBeCloseTo(0.55, 12);
  expect(summary?.half?.[1]).toBeCloseTo(0.85, 12);
  expect(summary?.beside).toBeCloseTo(0.7 * 95, 12);
});

it('claims nothing of four stones, and no interval of five', () => {
  const stones = inventedDigests([0.5, 0.6, 0.7, 0.8, 0.9], (share) => ({ gloss: inventedGloss(share) }));
  expect(groupSummary(group(stones.slice(1)), 'gloss')).toMatchObject({
    isFew: true,
    middle: null,
    half: null,
  });
  expect(groupSummary(group(stones), 'gloss')).toMatchObject({ isFew: false, middle: 0.7, sure: null });
});

it('takes the plain median of weeks when every stone has left coarse', () => {
  expect(groupSummary(group(inCoarse([3, 5, 4, 9, 7])), 'coarse')).toMatchObject({
    middle: 5,
    half: [4, 7],
    waiting: 0,
  });
});

it('lets stones that still wait draw the weeks up', () => {
  const left = inCoarse([2, 3, 4, 5, 6]);
  const still = inCoarse([6, 6, 6], { steps: ['coarse'], action: 'repeat' });
  const summary = groupSummary(group([...left, ...still]), 'coarse');
  expect(summary).toMatchObject({ known: 5, waiting: 3, middle: 5, half: [3, null] });
  // The greatest of eight closes the interval, and may be any of those that wait.
  expect(summary?.sure).toEqual([2, null]);
});

it('has no median where most stones were set aside in coarse', () => {
  const left = inCoarse([2, 3, 4, 5, 6]);
  const given = inCoarse([1, 1, 1, 1, 1, 1], { steps: ['coarse'], action: 'set-aside' });
  expect(groupSummary(group([...left, ...given]), 'coarse')).toMatchObject({
    isFew: false,
    givenUp: 6,
    middle: null,
  });
});

it('counts finished stones among those whose end is known', () => {
  const actions = [...Array(11).fill('finished'), ...Array(3).fill('set-aside'), 'repeat', 'repeat'];
  const stones = inventedDigests(actions, (action) => ({ action }));
  const summary = groupSummary(group(stones), 'finished');
  expect(summary).toMatchObject({ known: 11, givenUp: 3, waiting: 2 });
  expect(summary?.middle).toBeCloseTo(11 / 14, 12);
  // Wilson's interval of 11 of 14 by SciPy, tests/golden/compare.json.
  expect(summary?.sure?.[0]).toBeCloseTo(0.5241, 4);
  expect(summary?.sure?.[1]).toBeCloseTo(0.9243, 4);
});

it('says how many batches speak for it', () => {
  const stones = ['a', 'b', 'a'].map((batch) => inventedDigest({ batch }));
  expect(groupSummary(group(stones), 'gloss')?.batches).toBe(2);
  const underWay = inventedDigest({ batch: 'c', action: 'repeat' });
  expect(groupSummary(group([...stones, underWay]), 'finished')?.batches).toBe(2);
});

it('is nothing where no stone adds a figure', () => {
  expect(groupSummary(group([inventedDigest({ gloss: null })]), 'gloss')).toBeNull();
});
