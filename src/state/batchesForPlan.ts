import { type BatchHistory, batchHistory } from '../history/batchHistory';
import { currentRecords } from '../history/currentRecords';
import type { Journal } from '../journal/openJournal';

/** All batches as a plan needs them: those under way whole, those that are over with nothing but their runs, which used grit. */
export async function batchesForPlan(journal: Journal): Promise<BatchHistory[]> {
  const batches = currentRecords(await journal.ofKind('batch'));
  const runs = currentRecords(await journal.ofKind('run'));
  return Promise.all(
    batches.map(async (batch): Promise<BatchHistory> => {
      const records = batch.isOver ? null : await journal.batch(batch.id);
      if (records) return batchHistory(records);
      return { batch, runs: runs.filter((run) => run.batch === batch.id), checks: [], stones: [] };
    }),
  );
}
