import { expect, it } from 'vitest';
import { batchHistory } from '../../src/history/batchHistory';
import type { DecisionRecord, IdentityRecord } from '../../src/journal/records';
import { inventedBatch, weeksInCoarse } from '../helpers/inventedBatch';

it('puts the checks of each stone together, the oldest first', () => {
  const { stones, checks } = batchHistory(inventedBatch(weeksInCoarse([[{ pits: 4 }, {}], [{ pits: 2 }]])));
  expect(checks.map(({ check }) => check.day)).toEqual(['2026-03-09', '2026-03-16']);
  expect(stones.map((one) => one.checks.length)).toEqual([2, 1]);
  expect(stones[0]!.checks.map(({ faces }) => faces[0].stone.flaws.length)).toEqual([4, 2]);
});

it('sorts checks by their days, also when an old one was kept late', () => {
  const [early, late] = weeksInCoarse([[{}], [{}]]);
  const { checks } = batchHistory(inventedBatch([late!, early!]));
  expect(checks.map(({ check }) => check.day)).toEqual(['2026-03-09', '2026-03-16']);
});

it('adds up the sides of a check', () => {
  const [first, second] = weeksInCoarse([[{ pits: 3 }], [{ pits: 1 }]]);
  const { stones, checks } = batchHistory(inventedBatch([first!, { ...second!, day: 7, faceOf: 0 }]));
  expect(checks).toHaveLength(1);
  expect(checks[0]!.photos).toHaveLength(2);
  expect(stones[0]!.checks[0]!.faces.map(({ stone }) => stone.flaws.length)).toEqual([3, 1]);
});

it('takes a side whose first photo is missing for a check of its own', () => {
  const records = inventedBatch(
    weeksInCoarse([[{}], [{}]]).map((check, i) => ({ ...check, ...(i ? { faceOf: 0 } : {}) })),
  );
  expect(batchHistory({ ...records, checks: records.checks.slice(1) }).checks).toHaveLength(1);
});

it('believes what was said last of which stone is which', () => {
  const records = inventedBatch(weeksInCoarse([[{ pits: 1 }, { pits: 5 }]]));
  const first = records.identities[0]!;
  const [a, b] = first.stones;
  const swapped: IdentityRecord = {
    ...first,
    id: `${first.id}Z`,
    corrects: first.id,
    stones: [
      { ...a!, stone: b!.stone },
      { ...b!, stone: a!.stone },
    ],
  };
  const { stones } = batchHistory({ ...records, identities: [swapped, first] });
  expect(stones.map(({ checks }) => checks[0]!.faces[0].stone.flaws.length)).toEqual([5, 1]);
});

it('keeps the last decision about a stone at a check', () => {
  const records = inventedBatch(weeksInCoarse([[{}]]));
  const about = { kind: 'decision', batch: records.batch.id, check: records.checks[0]!.id } as const;
  const stone = records.stones[0]!.id;
  const decisions: DecisionRecord[] = [
    { ...about, id: '01X', stone, action: 'repeat' },
    { ...about, id: '01Y', stone, action: 'advance' },
  ];
  expect(batchHistory({ ...records, decisions }).stones[0]!.checks[0]!.decision).toBe('advance');
  expect(batchHistory(records).stones[0]!.checks[0]!.decision).toBeNull();
});

const withdrawal = (of: string, isWithdrawn: boolean, id = '01BZ0000') =>
  ({ kind: 'withdrawal', id, batch: '01B00000', of, isWithdrawn }) as const;

it('leaves out what was withdrawn, until it is taken in again', () => {
  const records = inventedBatch(weeksInCoarse([[{ pits: 4 }, {}], [{ pits: 2 }]]));
  const [first, second] = records.checks;
  const without = batchHistory({ ...records, withdrawals: [withdrawal(second!.id, true)] });
  expect(without.checks.map(({ check }) => check.id)).toEqual([first!.id]);
  expect(without.stones.map((one) => one.checks.length)).toEqual([1, 1]);
  const back = [withdrawal(second!.id, true), withdrawal(second!.id, false, '01BZ0001')];
  expect(batchHistory({ ...records, withdrawals: back })).toEqual(batchHistory(records));
});

it('leaves a withdrawn stone out, and keeps its checks for the others', () => {
  const records = inventedBatch(weeksInCoarse([[{ pits: 4 }, {}]]));
  const found = batchHistory({ ...records, withdrawals: [withdrawal(records.stones[0]!.id, true)] });
  expect(found.stones.map(({ stone }) => stone.name)).toEqual(['2']);
  expect(found.checks).toHaveLength(1);
});

it('loses no photo where sides are sides of sides, or of each other in a circle', () => {
  const records = inventedBatch(weeksInCoarse([[{}], [{}], [{}], [{}]]));
  const [a, b, c, d] = records.checks;
  const photosWith = (faceOf: readonly (string | null)[]) => {
    const checks = records.checks.map((photo, i) => ({ ...photo, faceOf: faceOf[i] ?? null }));
    const history = batchHistory({ ...records, checks });
    return history.checks.map(({ check, photos }) => [check.id, photos.map(({ id }) => id)]);
  };
  const ids = [a!.id, b!.id, c!.id, d!.id];
  expect(photosWith([null, a!.id, b!.id, c!.id])).toEqual([[a!.id, ids]]);
  expect(photosWith([b!.id, a!.id, a!.id, d!.id])).toEqual([
    [a!.id, ids.slice(0, 3)],
    [d!.id, [d!.id]],
  ]);
  expect(photosWith([d!.id, d!.id, b!.id, c!.id])).toEqual([[b!.id, ids]]);
});
