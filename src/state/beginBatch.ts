import type { MaterialName } from '../grading/materials';
import type { Journal } from '../journal/openJournal';
import { recordId } from '../journal/recordId';
import type { BatchRecord, Day, JournalRecord, RecordId, RunRecord } from '../journal/records';

/** What the owner says of a batch that starts. */
export interface BatchToBegin {
  /** Not empty. */
  readonly name: string;
  readonly materials: readonly MaterialName[];
  readonly source: string;
  readonly machine: RecordId | null;
  readonly day: Day;
  /** Its first run; null where no machine was said. */
  readonly run: Omit<RunRecord, 'id' | 'batch' | 'kind'> | null;
}

/**
 * Adds a batch with its first run: both or, when the storage refuses, none.
 *
 * @returns Id of the batch.
 */
export async function beginBatch(journal: Journal, { day, run, ...said }: BatchToBegin): Promise<RecordId> {
  const id = recordId();
  const batch: BatchRecord = { kind: 'batch', id, ...said, startedOn: day, isOver: false };
  const runs: JournalRecord[] = run === null ? [] : [{ ...run, kind: 'run', id: recordId(), batch: id }];
  await journal.add([batch, ...runs]);
  return id;
}
