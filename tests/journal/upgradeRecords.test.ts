import { expect, it } from 'vitest';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import { batchHistory } from '../../src/history/batchHistory';
import type { CheckRecord } from '../../src/journal/records';
import { RECORDS_VERSION, upgradeRecords } from '../../src/journal/upgradeRecords';
import { FIRST_VERSION } from '../helpers/firstVersion';
import { inventedBatch, recordsOf, weeksInCoarse } from '../helpers/inventedBatch';
import { SECOND_VERSION } from '../helpers/secondVersion';

it('brings a journal of the first version up, with null for what it did not keep', () => {
  const [batch, check] = upgradeRecords(FIRST_VERSION, 1);
  expect(batch).toEqual({ ...FIRST_VERSION[0], materials: [], source: '' });
  expect(check).toMatchObject({
    faceOf: null,
    material: null,
    limits: DEFAULT_LIMITS.coarse,
    longestPx: null,
  });
  const stone = (check as CheckRecord).stones[0]!;
  expect(stone).toMatchObject({ lengthMm: 31.2, look: null, highlight: null, cutOff: false });
});

it('brings a journal of the second version up: nothing was said of what its batches are of', () => {
  const [batch, run] = upgradeRecords(SECOND_VERSION, 2);
  expect(batch).toEqual({ ...SECOND_VERSION[0], materials: [], source: '' });
  expect(run).toEqual(SECOND_VERSION[1]);
});

it('goes from the first version to the newest in single steps as in one', () => {
  const second = upgradeRecords(FIRST_VERSION, 1, 2);
  expect(second[0]).toEqual(FIRST_VERSION[0]);
  expect(upgradeRecords(second as never, 2)).toEqual(upgradeRecords(FIRST_VERSION, 1));
});

it('leaves records of this version as they are', () => {
  const records = recordsOf(inventedBatch(weeksInCoarse([[{ pits: 2 }]])));
  expect(upgradeRecords(records as never, RECORDS_VERSION)).toEqual(records);
});

it('gives records that can be graded', () => {
  const [batch, check] = upgradeRecords(FIRST_VERSION, 1);
  const none = { runs: [], stones: [], identities: [], decisions: [], withdrawals: [] };
  const history = batchHistory({ batch: batch as never, checks: [check as CheckRecord], ...none });
  expect(history.checks[0]!.check.day).toBe('2026-03-09');
});

it('refuses what a newer program wrote', () => {
  expect(() => upgradeRecords([], RECORDS_VERSION + 1)).toThrow('newer Glintgrade');
});
