import { expect, it } from 'vitest';
import { recordsIn } from '../../src/bundle/readRecords';
import { batchFromPhotos } from '../../src/cli/batchFromPhotos';
import { gradeStone } from '../../src/grading/gradeStone';
import { batchHistory } from '../../src/history/batchHistory';
import { inventedReport } from '../helpers/inventedReport';

const SETTING = { step: 'coarse', material: 'agate' } as const;

/** A photo of so many invented stones, kept on a day. */
function photoOf(stoneCount: number, day: string) {
  const report = inventedReport(stoneCount);
  const grades = report.stones.map((stone) => gradeStone(stone, { ...SETTING, limits: null }));
  return { report, grades, day, ...SETTING, photo: 'ab'.repeat(32) };
}

it('names the stones of the first photo, and of later ones only those it knows for sure', () => {
  const batch = batchFromPhotos([photoOf(4, '2026-03-09'), photoOf(5, '2026-03-16')], 'river finds');
  const { stones, checks } = batchHistory(batch);
  expect(checks.map(({ check, stoneAt }) => [check.day, check.stones.length, stoneAt.size])).toEqual([
    ['2026-03-09', 4, 4],
    ['2026-03-16', 5, 4],
  ]);
  expect(stones.map((one) => [one.stone.name, one.checks.map(({ faces }) => faces[0].stone.place)])).toEqual([
    ...[
      ['1', [1, 1]],
      ['2', [2, 2]],
      ['3', [3, 3]],
      ['4', [4, 4]],
    ],
  ]);
  const [first, second] = batch.identities;
  expect(first!.stones.every(({ confidence }) => confidence === null)).toBe(true);
  expect(second!.stones.every(({ confidence }) => confidence !== null && confidence >= 0.95)).toBe(true);
});

it('gives records that a bundle takes in, each later than the one before', () => {
  const { batch, stones, checks, identities } = batchFromPhotos([photoOf(2, '2026-03-09')], 'river finds');
  const records = [batch, ...stones, ...checks, ...identities];
  expect(recordsIn(records)).toHaveLength(5);
  expect(new Set(records.map(({ id }) => id)).size).toBe(5);
  expect(batch).toMatchObject({ name: 'river finds', startedOn: '2026-03-09' });
});
