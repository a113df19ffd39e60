import { expect, it } from 'vitest';
import { ceilingGu60 } from '../../src/grading/ceilingGu60';
import { batchDigest } from '../../src/history/batchDigest';
import { inventedBatch, weeksInCoarse } from '../helpers/inventedBatch';

const whole = () =>
  inventedBatch(
    [
      ...weeksInCoarse([[{ pits: 9, lengthMm: 32 }], [{ lengthMm: 31 }]]),
      { step: 'fine', day: 21, stones: [{ lengthMm: 30.8, alpha: 0.2 }] },
      { step: 'polish', day: 35, stones: [{ lengthMm: 30.5, alpha: 0.008 }] },
    ],
    { material: 'agate' },
  );

it('sums up a batch that went from coarse to polish', () => {
  const { name, checkCount, last, stones } = batchDigest(whole());
  expect({ name, checkCount }).toEqual({ name: 'Brook pebbles', checkCount: 4 });
  expect(last).toMatchObject({ day: '2026-04-06', step: 'polish', actions: { finished: 1 } });
  const [stone] = stones;
  expect(stone).toMatchObject({ checkCount: 4, coarseDays: 14, lengthMm: [32, 30.5], material: 'agate' });
  expect(stone!.steps).toEqual(['coarse', 'fine', 'polish']);
  expect(stone!.action).toBe('finished');
  // Chalcedony, n = 1.535 by the handbook tables that src/grading/materials.ts names: 60° gloss of a perfect polish.
  expect(stone!.gloss!.ceilingGu60).toBeCloseTo(ceilingGu60(1.535), 1);
  expect(stone!.gloss!.shareOfCeiling).toBeGreaterThan(0.9);
});

it('reads gloss only after polish', () => {
  const records = whole();
  const before = { ...records, checks: records.checks.slice(0, 3) };
  expect(batchDigest(before).stones[0]!.gloss).toBeNull();
});

it('has no last check before the first', () => {
  expect(batchDigest(inventedBatch([]))).toMatchObject({ checkCount: 0, last: null, stones: [] });
});

it('tells what was done rather than what was advised', () => {
  const records = whole();
  const about = { batch: records.batch.id, check: records.checks.at(-1)!.id, stone: records.stones[0]!.id };
  const decisions = [{ kind: 'decision', id: '01Z', ...about, action: 'repeat' } as const];
  expect(batchDigest({ ...records, decisions }).stones[0]!.action).toBe('repeat');
});
