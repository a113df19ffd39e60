import fc from 'fast-check';
import { expect, it } from 'vitest';
import { batchHistory } from '../../src/history/batchHistory';
import { proposeAnew, proposeStones, swapStones } from '../../src/history/proposeStones';
import { inventedBatch, weeksInCoarse } from '../helpers/inventedBatch';
import { inventedReport } from '../helpers/inventedReport';

const looks = (count: number) => inventedReport(count).stones.map(({ id, look }) => ({ place: id, look }));
const batchOf = (count: number) =>
  batchHistory(inventedBatch(weeksInCoarse([Array.from({ length: count }, () => ({}))])));

it('knows the stones of the last check again, however they lie', () => {
  const history = batchOf(6);
  const seen = looks(6).toReversed();
  const proposals = proposeStones(seen, history);
  expect(proposals.map(({ place }) => place)).toEqual([6, 5, 4, 3, 2, 1]);
  expect(
    proposals.map(({ stone }) => history.stones.find((one) => one.stone.id === stone)?.stone.name),
  ).toEqual(['6', '5', '4', '3', '2', '1']);
  expect(proposals.every(({ stone, candidates }) => candidates[0] === stone)).toBe(true);
});

it('asks about a stone that none of the known ones looks like', () => {
  const proposals = proposeStones(looks(4), batchOf(3));
  const odd = proposals.find(({ stone }) => stone === null);
  expect(odd).toMatchObject({ isUnsure: true });
  expect(odd!.candidates).toHaveLength(3);
});

it('takes every stone of a new batch for new, and asks nothing', () => {
  const proposals = proposeStones(looks(3), { checks: [], stones: [] });
  expect(proposals.every(({ stone, isUnsure }) => stone === null && !isUnsure)).toBe(true);
});

it('thinks of no other stones when the photo shows another side of a check', () => {
  const [first, second] = weeksInCoarse([
    [{}, {}, {}],
    [{}, {}],
  ]);
  const history = batchHistory(inventedBatch([first!, second!]));
  const [, last] = history.checks;
  const proposals = proposeStones(looks(2), history, last!.check.id);
  expect(proposals.every(({ candidates }) => candidates.length === 2)).toBe(true);
});

it('lets no stone lie in two places, whatever is tapped', () => {
  const aTap = fc.tuple(fc.integer({ min: 1, max: 4 }), fc.option(fc.constantFrom('a', 'b', 'c', 'd')));
  fc.assert(
    fc.property(fc.array(aTap, { maxLength: 12 }), (taps) => {
      const start = new Map<number, string | null>([
        [1, 'a'],
        [2, 'b'],
        [3, null],
        [4, 'c'],
      ]);
      const swapped = taps.reduce((stones, [place, stone]) => swapStones(stones, place, stone), start);
      const named = [...swapped.values()].filter((stone) => stone !== null);
      expect(new Set(named).size).toBe(named.length);
      expect([...swapped.keys()].sort()).toEqual([1, 2, 3, 4]);
    }),
  );
});

it('swaps two stones with one tap', () => {
  const stones = new Map<number, string | null>([
    [1, 'a'],
    [2, 'b'],
  ]);
  expect([...swapStones(stones, 1, 'b')]).toEqual([
    [1, 'b'],
    [2, 'a'],
  ]);
});

it('asks anew about a kept photo: what it was named, and whom its nameless stones are like', () => {
  const records = inventedBatch(
    weeksInCoarse([
      [{}, {}, {}],
      [{}, {}, {}],
    ]),
  );
  const [first, second] = records.identities;
  const history = batchHistory({
    ...records,
    identities: [first!, { ...second!, stones: second!.stones.slice(0, 2) }],
  });
  const photo = history.checks[1]!.check;
  const [one, , three] = proposeAnew(history, photo);
  expect(one).toMatchObject({ place: 1, stone: records.stones[0]!.id, isUnsure: false });
  expect(three).toMatchObject({ place: 3, stone: records.stones[2]!.id, isUnsure: true });
});
