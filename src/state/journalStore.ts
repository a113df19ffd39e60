import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Step } from '../grading/steps';
import { checkRecord } from '../journal/checkRecord';
import { currentRecords } from '../journal/currentRecords';
import type { Journal, KeptPhoto } from '../journal/openJournal';
import { recordId } from '../journal/recordId';
import type { BatchRecord, CheckRecord, Day, RecordId } from '../journal/records';
import type { GradedPhoto } from './gradePhoto';

/** A batch as the list shows it. */
export interface BatchSummary {
  readonly batch: BatchRecord;
  readonly checkCount: number;
  readonly last: CheckRecord | null;
}

export interface CheckToKeep {
  /** The photo's id on this visit. */
  readonly photoId: number;
  readonly file: Blob;
  readonly graded: GradedPhoto;
  readonly step: Step;
  readonly day: Day;
  /** An existing batch, or the name of a new one. */
  readonly batch: { readonly id: RecordId } | { readonly name: string };
}

export interface JournalState {
  readonly status: 'opening' | 'open' | 'refused';
  readonly batches: readonly BatchSummary[];
  /** The check that each photo of this visit was kept as. */
  readonly keptAs: Readonly<Record<number, RecordId>>;
  /** What went wrong last; null when nothing did. */
  readonly trouble: string | null;
  readonly keep: (check: CheckToKeep) => Promise<void>;
  readonly checksOf: (batch: RecordId) => Promise<CheckRecord[]>;
  readonly photoOf: (key: string) => Promise<KeptPhoto | null>;
}

const REFUSED =
  'This browser keeps no journal here: storage is forbidden, as in a private window. Checks are measured, but not remembered.';
const FULL =
  'The check could not be kept: the storage may be full. Free some space and keep it again; nothing kept before is lost.';

/**
 * Holds the journal's list of batches.
 *
 * @param open - Opens the journal.
 * @param shrink - Makes a photo ready to be kept.
 */
export function createJournalStore(
  open: () => Promise<Journal>,
  shrink: (file: Blob) => Promise<KeptPhoto>,
): StoreApi<JournalState> {
  const opened = open();
  const store = createStore<JournalState>()((set, get) => ({
    status: 'opening',
    batches: [],
    keptAs: {},
    trouble: null,
    keep: async (check) => {
      try {
        const journal = await opened;
        const added = await addCheck(journal, check, shrink);
        set({
          keptAs: { ...get().keptAs, [check.photoId]: added },
          batches: await summaries(journal),
          trouble: null,
        });
      } catch {
        set({ trouble: get().status === 'refused' ? REFUSED : FULL });
      }
    },
    checksOf: async (batch) => currentRecords(await (await opened).ofBatch('check', batch)),
    photoOf: async (key) => (await opened).photo(key),
  }));
  opened.then(
    async (journal) => store.setState({ status: 'open', batches: await summaries(journal) }),
    () => store.setState({ status: 'refused', trouble: REFUSED }),
  );
  return store;
}

async function addCheck(
  journal: Journal,
  { file, graded, step, day, batch }: CheckToKeep,
  shrink: (file: Blob) => Promise<KeptPhoto>,
): Promise<RecordId> {
  const photo = await shrink(file);
  const fresh: BatchRecord[] =
    'id' in batch
      ? []
      : [{ kind: 'batch', id: recordId(), name: batch.name, machine: null, startedOn: day, isOver: false }];
  const batchId = 'id' in batch ? batch.id : fresh[0]!.id;
  const id = recordId();
  const check = checkRecord(
    { id, batch: batchId, step, day, photo: photo.key },
    graded.report,
    graded.grades,
  );
  await journal.keepPhoto(photo);
  await journal.add([...fresh, check]);
  return id;
}

/** Batches with the newest check first. */
async function summaries(journal: Journal): Promise<BatchSummary[]> {
  const batches = currentRecords(await journal.ofKind('batch'));
  const all = await Promise.all(
    batches.map(async (batch) => ({
      batch,
      checkCount: await journal.countOfBatch('check', batch.id),
      last: await journal.lastOfBatch('check', batch.id),
    })),
  );
  const newest = ({ batch, last }: BatchSummary) => last?.id ?? batch.id;
  return all.sort((a, b) => (newest(a) < newest(b) ? 1 : -1));
}
