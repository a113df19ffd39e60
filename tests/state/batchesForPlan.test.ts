import { expect, it } from 'vitest';
import type { Journal } from '../../src/journal/openJournal';
import type { BatchRecord, RunRecord } from '../../src/journal/records';
import { batchesForPlan } from '../../src/state/batchesForPlan';
import { inventedBatch, weeksInCoarse } from '../helpers/inventedBatch';

const open = inventedBatch(weeksInCoarse([[{}]]));
const over: BatchRecord = { ...inventedBatch([], { letter: 'C' }).batch, isOver: true };
const run: RunRecord = {
  ...({ kind: 'run', id: '01R', batch: over.id, machine: null, step: 'coarse' } as const),
  ...{ startedOn: '2026-01-01', endedOn: '2026-01-09', charge: '' },
};

it('reads batches under way whole, and of those that are over only what they used', async () => {
  const read: string[] = [];
  const journal: Pick<Journal, 'batch' | 'ofKind'> = {
    ofKind: async (kind) => (kind === 'batch' ? [open.batch, over] : [run]) as never,
    batch: async (id) => {
      read.push(id);
      return open;
    },
  };
  const [first, second] = await batchesForPlan(journal as Journal);
  expect(first!.checks).toHaveLength(1);
  expect(second).toEqual({ batch: over, runs: [run], checks: [], stones: [] });
  expect(read).toEqual([open.batch.id]);
});
