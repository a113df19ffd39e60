import { expect, it } from 'vitest';
import { groupStones } from '../../src/compare/groupStones';
import { inventedDigest } from './inventedDigest';

const names = new Map([['b1', 'Winter barrel']]);

it('puts stones of one material together, and those of which nothing was said', () => {
  const stones = (['agate', null, 'agate'] as const).map((material) => inventedDigest({ material }));
  const groups = groupStones(stones, 'material', names);
  expect(groups.map(({ name, stones: own }) => [name, own.length])).toEqual([
    ['Agate', 2],
    ['', 1],
  ]);
});

it('does not part sources by capital letters or spaces', () => {
  const stones = ['Dry Creek', ' dry  creek ', 'Far Ridge'].map((source) => inventedDigest({ source }));
  expect(groupStones(stones, 'source', names).map(({ name }) => name)).toEqual(['Dry Creek', 'Far Ridge']);
});

it('calls batches by their names, and one without by the day of its first check', () => {
  const stones = ['b1', 'b2'].map((batch) => inventedDigest({ batch, firstDay: '2031-03-02' }));
  expect(groupStones(stones, 'batch', names).map(({ name }) => name)).toEqual([
    'Winter barrel',
    'Batch of 2031-03-02',
  ]);
});

it('takes the same steps for one recipe, in whatever order they were met', () => {
  const stones = [
    inventedDigest({ steps: ['coarse', 'fine', 'polish'] }),
    inventedDigest({ steps: ['fine', 'coarse', 'polish'] }),
    inventedDigest({ steps: ['coarse', 'prepolish', 'polish'] }),
  ];
  expect(groupStones(stones, 'recipe', names).map(({ name }) => name)).toEqual([
    'Coarse, fine, polish',
    'Coarse, pre-polish, polish',
  ]);
});

it('loses no stone, whatever they are put together by', () => {
  const stones = Array.from({ length: 30 }, (_, k) =>
    inventedDigest({ batch: `b${k % 7}`, source: `s${k % 4}`, material: k % 3 ? 'agate' : 'jasper' }),
  );
  for (const by of ['material', 'source', 'batch', 'recipe'] as const) {
    const kept = groupStones(stones, by, names).flatMap((group) => group.stones);
    expect(new Set(kept)).toEqual(new Set(stones));
    expect(kept).toHaveLength(30);
  }
});

it('makes no group of no stones', () => {
  expect(groupStones([], 'material', names)).toEqual([]);
});
