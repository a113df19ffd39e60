import { expect, it } from 'vitest';
import type { CompareWhat } from '../../src/compare/compareBy';
import { compareGroups } from '../../src/compare/compareGroups';
import { rankSum } from '../../src/compare/rankSum';
import { standings } from '../../src/compare/standings';
import { standingWords } from '../../src/compare/standingWords';
import type { MaterialName } from '../../src/grading/materials';
import type { StoneDigest } from '../../src/history/batchDigest';
import { inventedDigests, inventedGloss } from './inventedDigest';

const evenly = (count: number, from: number, to: number) =>
  Array.from({ length: count }, (_, k) => from + ((to - from) * k) / (count - 1));

const glossy = (material: MaterialName, shares: readonly number[]) =>
  inventedDigests(shares, (share) => ({ material, gloss: inventedGloss(share) }));

function words(stones: readonly StoneDigest[], what: CompareWhat, place = 0) {
  const { groups } = compareGroups(stones, 'material', what, new Map());
  return standingWords(standings(groups[place]!, groups, what), 'material', what);
}

it('calls groups different that lie well apart, from either side', () => {
  const stones = [...glossy('agate', evenly(10, 0.8, 0.95)), ...glossy('jasper', evenly(10, 0.4, 0.6))];
  expect(words(stones, 'gloss')).toEqual(['Higher than jasper.']);
  expect(words(stones, 'gloss', 1)).toEqual(['Lower than agate.']);
});

it('does not call groups different that overlap', () => {
  const stones = [...glossy('agate', evenly(10, 0.7, 0.9)), ...glossy('jasper', evenly(10, 0.68, 0.88))];
  expect(words(stones, 'gloss')).toEqual(['No difference that can be told yet from jasper.']);
});

it('asks more of each pair the more pairs there are', () => {
  // Five against five wholly apart: odds of 2 in 252, below 5 % but not below a tenth of that.
  const two = [...glossy('agate', evenly(5, 0.8, 0.9)), ...glossy('jasper', evenly(5, 0.5, 0.6))];
  const others = (['quartz', 'opal', 'garnet'] as const).flatMap((name, k) =>
    glossy(name, evenly(5, 0.1 + k / 100, 0.4 + k / 100)),
  );
  expect(words(two, 'gloss')).toEqual(['Higher than jasper.']);
  expect(words([...two, ...others], 'gloss')).toEqual([
    'No difference that can be told yet from jasper, garnet, opal and quartz.',
  ]);
});

it('compares nothing with three stones, and three stones with nothing', () => {
  const stones = [...glossy('agate', evenly(20, 0.8, 0.9)), ...glossy('jasper', [0.1, 0.2, 0.3])];
  expect(words(stones, 'gloss')).toEqual([]);
  expect(words(stones, 'gloss', 1)).toEqual([]);
});

it('tells weeks in coarse apart, counting stones that wait', () => {
  const stones = [
    ...inventedDigests(evenly(12, 14, 30), (coarseDays) => ({ material: 'howlite' as const, coarseDays })),
    ...inventedDigests(evenly(12, 60, 90), (coarseDays, place) => ({
      material: 'agate' as const,
      coarseDays,
      ...(place > 8 ? { steps: ['coarse' as const], action: 'repeat' as const } : {}),
    })),
  ];
  expect(words(stones, 'coarse')).toEqual(['Sooner than agate.']);
  expect(words(stones, 'coarse', 1)).toEqual(['Later than howlite.']);
});

it('tells shares of finished stones apart', () => {
  const stones = (['agate', 'jasper'] as const).flatMap((material, k) =>
    inventedDigests(evenly(20, 0, 1), (_, place) => ({
      material,
      action: place < (k === 0 ? 18 : 6) ? ('finished' as const) : ('set-aside' as const),
    })),
  );
  expect(words(stones, 'finished')).toEqual(['More often than jasper.']);
});

it('says nothing where ranks and medians point apart', () => {
  // Agate's lower half lies above jasper's lower half and below its upper, agate's upper half above all.
  const agate = [...evenly(51, 0.1, 0.2), ...evenly(50, 0.9, 0.95)];
  const jasper = [...evenly(50, 0.02, 0.05), ...evenly(51, 0.3, 0.4)];
  expect(rankSum(agate, jasper).odds).toBeLessThan(1e-6);
  const stones = [...glossy('agate', agate), ...glossy('jasper', jasper)];
  expect(words(stones, 'gloss')[0]).toMatch(/^No difference/);
});
