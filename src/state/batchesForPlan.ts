import { type BatchHistory, batchHistory } from '../history/batchHistory';
import { currentRecords } from '../history/currentRecords';
import type { Journal } from '../journal/openJournal';
import { partOf, type Watch } from '../progress/watch';

/**
 * All batches as a plan needs them: those under way whole, those that are over with nothing but their runs, which used
 * grit. Each of 20 checks under way takes 0.1 s on a computer.
 *
 * @throws The reason for which it was called off.
 */
export async function batchesForPlan(journal: Journal, watch: Watch = {}): Promise<BatchHistory[]> {
  const batches = currentRecords(await journal.ofKind('batch'));
  const runs = currentRecords(await journal.ofKind('run'));
  const found: BatchHistory[] = [];
  for (const [i, batch] of batches.entries()) {
    const part = partOf(watch, i / batches.length, (i + 1) / batches.length);
    const records = batch.isOver ? null : await journal.batch(batch.id, part);
    const own = runs.filter((run) => run.batch === batch.id);
    found.push(records ? batchHistory(records) : { batch, runs: own, checks: [], stones: [] });
  }
  return found;
}
