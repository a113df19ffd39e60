import { createStore, type StoreApi } from 'zustand/vanilla';
import { BundleError } from '../bundle/bundleError';
import type { BatchDigest } from '../history/batchDigest';
import { type BatchHistory, batchHistory } from '../history/batchHistory';
import { currentRecords } from '../history/currentRecords';
import { type Proposal, proposeStones } from '../history/proposeStones';
import { usualEnds } from '../history/usualEnds';
import type { Journal, KeptPhoto } from '../journal/openJournal';
import { recordId } from '../journal/recordId';
import type { CheckRecord, MachineRecord, RecordId } from '../journal/records';
import type { GradedPhoto } from './gradePhoto';
import { type TakenIn, takeInBundle } from './journalExchange';
import { type CheckToKeep, type KeptAs, keepCheck, type NamedPlace, nameStones } from './keepCheck';
import { type MindedStone, mindedVerdicts } from './mindedVerdicts';
import type { Saying } from './saidAnew';

export interface JournalState {
  readonly status: 'opening' | 'open' | 'refused';
  /** Those with the newest check first. */
  readonly batches: readonly BatchDigest[];
  readonly machines: readonly MachineRecord[];
  /** Where each photo of this visit, by its id, was last kept. */
  readonly keptAs: Readonly<Record<number, KeptAs>>;
  /** Stones of those photos by their places, with verdicts that have earlier checks in mind. */
  readonly minded: Readonly<Record<number, ReadonlyMap<number, MindedStone>>>;
  /** Grows with everything that is added, so that what was read can be read again. */
  readonly edition: number;
  /** What went wrong last; null when nothing did. */
  readonly trouble: string | null;
  /** Which of a batch's stones lie in a photo; all are new to a new batch, null. @returns Null when the journal could not be read. */
  readonly propose: (
    graded: GradedPhoto,
    batch: RecordId | null,
    faceOf: RecordId | null,
  ) => Promise<Proposal[] | null>;
  /** @returns Whether it was kept; if not, `trouble` says why. */
  readonly keep: (photoId: number, check: CheckToKeep) => Promise<boolean>;
  /** Says anew which stones lie in a kept photo. */
  readonly name: (photo: CheckRecord, stones: readonly NamedPlace[]) => Promise<boolean>;
  /** Adds what the owner says: names, decisions, runs, corrections. */
  readonly say: (sayings: readonly Saying[]) => Promise<boolean>;
  readonly historyOf: (batch: RecordId) => Promise<BatchHistory | null>;
  /** Takes a bundle in. @returns What it brought; null when it was refused, and `trouble` says why. */
  readonly takeIn: (file: Blob) => Promise<TakenIn | null>;
  readonly photoOf: (key: string) => Promise<KeptPhoto | null>;
  /** The journal itself, once it is open. */
  readonly opened: Promise<Journal>;
}

const REFUSED =
  'This browser keeps no journal here: storage is forbidden, as in a private window. Checks are measured, but not remembered.';
const UNREADABLE =
  'The journal could not be read just now. Open the page again and keep the check then; nothing is lost.';
const FULL =
  'It could not be kept: the storage may be full. Free some space and try again; nothing kept before is lost.';

/**
 * Holds the journal's list of batches, and adds to the journal.
 *
 * @param open - Opens the journal.
 * @param shrink - Makes a photo ready to be kept.
 */
export function createJournalStore(
  open: () => Promise<Journal>,
  shrink: (file: Blob) => Promise<KeptPhoto>,
): StoreApi<JournalState> {
  const opened = open();
  const store = createStore<JournalState>()((set, get) => {
    const refresh = async (journal: Journal) => {
      const lists = await listsOf(journal);
      const minded = await mindedOf(journal, get().keptAs, lists.batches);
      set({ ...lists, minded, edition: get().edition + 1, trouble: null });
    };
    const attempt = async <T>(work: (journal: Journal) => Promise<T>): Promise<T | null> => {
      try {
        const journal = await opened;
        const done = await work(journal);
        await refresh(journal);
        return done;
      } catch (error) {
        set({ trouble: get().status === 'refused' ? REFUSED : troubleOf(error) });
        return null;
      }
    };
    const historyOf = async (batch: RecordId) => {
      const records = await (await opened).batch(batch);
      return records && batchHistory(records);
    };
    return {
      ...{ status: 'opening', batches: [], machines: [], keptAs: {}, minded: {}, edition: 0, trouble: null },
      opened,
      historyOf,
      propose: async ({ report }, batch, faceOf) => {
        try {
          const history = batch === null ? null : await historyOf(batch);
          const seen = report.stones.map(({ id, look }) => ({ place: id, look }));
          return proposeStones(seen, history ?? { checks: [], stones: [] }, faceOf);
        } catch {
          set({ trouble: UNREADABLE });
          return null;
        }
      },
      keep: async (photoId, check) => {
        const kept = await attempt(async (journal) => {
          const added = await keepCheck(journal, check, shrink);
          set({ keptAs: { ...get().keptAs, [photoId]: added } });
          return added;
        });
        return kept !== null;
      },
      name: async (photo, stones) =>
        (await attempt((journal) => nameStones(journal, photo, stones).then(() => true))) !== null,
      say: async (sayings) => {
        const records = sayings.map((saying) => ({ ...saying, id: recordId() }));
        return (await attempt((journal) => journal.add(records).then(() => true))) !== null;
      },
      takeIn: (file) => attempt((journal) => takeInBundle(journal, file)),
      photoOf: async (key) => (await opened).photo(key),
    };
  });
  opened.then(
    async (journal) => store.setState({ status: 'open', ...(await listsOf(journal)) }),
    () => store.setState({ status: 'refused', trouble: REFUSED }),
  );
  return store;
}

/** A refused bundle says itself what is wrong with it; else the storage refused. */
const troubleOf = (error: unknown) => (error instanceof BundleError ? error.message : FULL);

/** Of every photo kept on this visit. */
async function mindedOf(
  journal: Journal,
  keptAs: JournalState['keptAs'],
  batches: readonly BatchDigest[],
): Promise<JournalState['minded']> {
  const ends = usualEnds(batches);
  const found: Record<number, ReadonlyMap<number, MindedStone>> = {};
  for (const [photoId, kept] of Object.entries(keptAs)) {
    const records = await journal.batch(kept.batch);
    if (records) found[Number(photoId)] = mindedVerdicts(kept, batchHistory(records), ends);
  }
  return found;
}

async function listsOf(journal: Journal): Promise<Pick<JournalState, 'batches' | 'machines'>> {
  const newest = ({ last, batch }: BatchDigest) => `${last?.day ?? ''} ${last?.check ?? batch}`;
  const batches = await journal.digests();
  return {
    batches: batches.sort((a, b) => (newest(a) < newest(b) ? 1 : -1)),
    machines: currentRecords(await journal.ofKind('machine')),
  };
}
