import { expect, it } from 'vitest';
import { compareGroups } from '../../src/compare/compareGroups';
import type { MaterialName } from '../../src/grading/materials';
import { inventedDigest, inventedDigests, inventedGloss } from './inventedDigest';

const stonesOf = (material: MaterialName, shares: readonly number[]) =>
  inventedDigests(shares, (share) => ({ material, gloss: inventedGloss(share), coarseDays: 100 * share }));

const stones = [
  ...stonesOf('opal', [1, 1, 1]),
  ...stonesOf('jasper', [0.4, 0.5, 0.6, 0.5, 0.5]),
  ...stonesOf('agate', [0.9, 0.8, 0.9, 0.9, 1]),
  inventedDigest({ material: 'quartz', gloss: null }),
];

it('puts the best first and groups with too few stones last', () => {
  const { groups } = compareGroups(stones, 'material', 'gloss', new Map());
  expect(groups.map(({ name }) => name)).toEqual(['Agate', 'Jasper', 'Opal']);
});

it('takes fewer weeks for better', () => {
  const { groups } = compareGroups(stones.slice(0, -1), 'material', 'coarse', new Map());
  expect(groups.map(({ name }) => name)).toEqual(['Jasper', 'Agate', 'Opal']);
});

it('counts stones that add no figure', () => {
  expect(compareGroups(stones, 'material', 'gloss', new Map()).without).toBe(1);
  expect(compareGroups(stones, 'material', 'finished', new Map()).without).toBe(0);
});

it('does not depend on the order of the stones', () => {
  const names = (all: typeof stones) =>
    compareGroups(all, 'material', 'gloss', new Map()).groups.map(({ name, middle, sure }) => ({
      name,
      middle,
      sure,
    }));
  expect(names([...stones].reverse())).toEqual(names(stones));
});

it('compares nothing of no stones', () => {
  expect(compareGroups([], 'batch', 'coarse', new Map())).toEqual({ groups: [], without: 0 });
});
