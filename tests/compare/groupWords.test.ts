import { expect, it } from 'vitest';
import type { CompareBy, CompareWhat } from '../../src/compare/compareBy';
import { compareGroups } from '../../src/compare/compareGroups';
import { countWords } from '../../src/compare/compareWords';
import { groupSentence, groupWords, sureWords } from '../../src/compare/groupWords';
import type { StoneDigest } from '../../src/history/batchDigest';
import { inventedDigests, inventedGloss } from './inventedDigest';

const first = (stones: readonly StoneDigest[], what: CompareWhat, by: CompareBy = 'material') =>
  compareGroups(stones, by, what, new Map()).groups[0]!;

const glossy = inventedDigests(
  [0.75, 0.8, 0.82, 0.83, 0.86, 0.87, 0.88, 0.88, 0.9, 0.92, 0.93, 0.94, 0.95, 0.97],
  (share, place) => ({ gloss: inventedGloss(share), batch: `b${place % 3}` }),
);

it('says what a material reached of its ceiling', () => {
  const group = first(glossy, 'gloss');
  expect(groupSentence(group, 'material', 'gloss')).toBe(
    'Agate reached 88\u00a0% of its ceiling (median of 14; half of them 84 to 93\u00a0%).',
  );
  expect(groupWords(group, 'gloss')).toBe('88\u00a0% of the ceiling; half of them 84 to 93\u00a0%');
  expect(sureWords(group, 'gloss')).toBe('The true median is likely 82 to 94\u00a0% (19 times in 20).');
  expect(countWords(group, 'gloss')).toBe('14 stones of 3 batches');
});

it('speaks of stones where the group is no material', () => {
  expect(groupSentence(first(glossy, 'gloss', 'source'), 'source', 'gloss')).toMatch(
    /^Stones from Dry Creek reached 88\u00a0% of their ceiling/,
  );
  expect(groupSentence(first(glossy, 'gloss', 'recipe'), 'recipe', 'gloss')).toMatch(
    /^Stones through coarse, medium, fine, pre-polish, polish reached/,
  );
});

it('says of three stones that they are only three', () => {
  const group = first(glossy.slice(0, 3), 'gloss');
  expect(countWords(group, 'gloss')).toBe('3 stones only');
  expect(groupSentence(group, 'material', 'gloss')).toBe('Agate: 3 stones only, so nothing is claimed.');
  expect(groupWords(group, 'gloss')).toBe('75\u00a0%, 80\u00a0%, 82\u00a0% of the ceiling');
});

it('says how many are still in coarse', () => {
  const stones = inventedDigests([2, 3, 4, 5, 6, 7, 7, 7], (time, place) => ({
    coarseDays: 7 * time,
    ...(place > 5 ? { steps: ['coarse' as const], action: 'repeat' as const } : {}),
  }));
  expect(groupSentence(first(stones, 'coarse'), 'material', 'coarse')).toBe(
    'Agate: half had left coarse after 5 weeks, a quarter after 3, three quarters after 7; 2 still in coarse.',
  );
  expect(groupWords(first(stones.slice(3), 'coarse'), 'coarse')).toBe('3 left coarse, 2 still in coarse');
});

it('says so where fewer than half have left coarse', () => {
  const stones = inventedDigests([1, 2, 3, 4, 5, ...Array(9).fill(6)], (time, place) => ({
    coarseDays: 7 * time,
    ...(place > 4 ? { steps: ['coarse' as const], action: 'repeat' as const } : {}),
  }));
  const group = first(stones, 'coarse');
  expect(groupWords(group, 'coarse')).toBe('fewer than half have left coarse, 5 of 14; 9 still in coarse');
  expect(sureWords(group, 'coarse')).toBeNull();
});

it('says how many finished and what the share may be', () => {
  const stones = inventedDigests(
    [...Array(11).fill('finished'), ...Array(3).fill('set-aside'), 'repeat'],
    (action) => ({
      action,
    }),
  );
  expect(groupSentence(first(stones, 'finished'), 'material', 'finished')).toBe(
    'Agate: 11 of 14 finished, 79\u00a0%; the true share is likely 52 to 92\u00a0%; 1 still under way.',
  );
});

it('says what was lost of length and of area', () => {
  const stones = inventedDigests([27, 28, 26, 29, 30.3], (last) => ({
    lengthMm: [30, last] as const,
    areaMm2: [600, 500] as const,
  }));
  expect(groupWords(first(stones, 'size'), 'size')).toBe(
    '7\u00a0% of the length lost, 17\u00a0% of the area; half of them 3 to 10\u00a0% of the length',
  );
});
