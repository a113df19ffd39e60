import { createStore, type StateCreator, type StoreApi } from 'zustand/vanilla';
import type { BatchDigest } from '../history/batchDigest';
import { type BatchHistory, batchHistory } from '../history/batchHistory';
import { currentRecords } from '../history/currentRecords';
import { type Proposal, proposeStones } from '../history/proposeStones';
import { usualEnds } from '../history/usualEnds';
import type { Journal, KeptPhoto } from '../journal/openJournal';
import { recordId } from '../journal/recordId';
import type { CheckRecord, MachineRecord, RecordId } from '../journal/records';
import { partOf, type Watch } from '../progress/watch';
import { onSpeech } from '../texts/speech';
import { type BatchToBegin, beginBatch } from './beginBatch';
import type { GradedPhoto } from './gradePhoto';
import { type TakenIn, takeInBundle } from './journalExchange';
import { type JournalTrouble, openingTrouble, troubleOf } from './journalTrouble';
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
  /** Grows with what this page itself added. */
  readonly added: number;
  /** Reads the lists again, as after another page has added something. */
  readonly refresh: () => Promise<void>;
  /** Records that were gone from the browser's database and came back from the safety copy on this visit. */
  readonly restored: number;
  /** What went wrong last; null when nothing did. `troubleWords` says it. */
  readonly trouble: JournalTrouble | null;
  /** Which of a batch's stones lie in a photo; all are new to a new batch, null. @returns Null when the journal could not be read. */
  readonly propose: (
    graded: GradedPhoto,
    batch: RecordId | null,
    faceOf: RecordId | null,
    watch?: Watch,
  ) => Promise<Proposal[] | null>;
  /**
   * Keeps a check, which takes a second or two on a phone.
   *
   * @returns Whether it was kept; if not, `trouble` says why.
   * @throws The reason for which it was called off; then nothing was kept.
   */
  readonly keep: (photoId: number, check: CheckToKeep, watch?: Watch) => Promise<boolean>;
  /** Takes things of a batch out of all lists, or back in. */
  readonly withdraw: (batch: RecordId, of: readonly RecordId[], isWithdrawn: boolean) => Promise<boolean>;
  /** Takes back that a photo was kept, with all that was new by it. */
  readonly unkeep: (photoId: number) => Promise<boolean>;
  /** Starts a batch. @returns Its id; null when it was not kept, and `trouble` says why. */
  readonly begin: (batch: BatchToBegin) => Promise<RecordId | null>;
  /** Takes over where photos at hand were kept on an earlier visit. */
  readonly recall: (keptAs: Readonly<Record<number, KeptAs>>) => void;
  /** Says anew which stones lie in a kept photo. */
  readonly name: (photo: CheckRecord, stones: readonly NamedPlace[]) => Promise<boolean>;
  /** Adds what the owner says: names, decisions, runs, corrections. @returns Their ids; null when they were not kept. */
  readonly say: (sayings: readonly Saying[]) => Promise<readonly RecordId[] | null>;
  readonly historyOf: (batch: RecordId, watch?: Watch) => Promise<BatchHistory | null>;
  /**
   * Takes a bundle in.
   *
   * @returns What it brought; null when it was refused, and `trouble` says why.
   * @throws The reason for which it was called off; then nothing was taken in.
   */
  readonly takeIn: (file: Blob, watch?: Watch) => Promise<TakenIn | null>;
  readonly photoOf: (key: string) => Promise<KeptPhoto | null>;
  /** The journal itself, once it is open. */
  readonly opened: Promise<Journal>;
}

/**
 * Holds the journal's list of batches, and adds to the journal.
 *
 * @param open - Opens the journal.
 * @param shrink - Makes a photo ready to be kept.
 */
export function createJournalStore(
  open: () => Promise<Journal>,
  shrink: (file: Blob, watch: Watch) => Promise<KeptPhoto>,
): StoreApi<JournalState> {
  const opened = open();
  const store = createStore<JournalState>()(journalOf(opened, shrink));
  opened.then(
    async (journal) => store.setState({ status: 'open', ...(await listsOf(journal)) }),
    (error) => store.setState({ status: 'refused', trouble: openingTrouble(error) }),
  );
  void opened
    .then(({ whole }) => whole)
    .then(async (restored) => {
      if (restored === 0) return;
      await store.getState().refresh();
      store.setState({ restored, added: store.getState().added + 1 });
    })
    .catch(() => undefined);
  onSpeech(() => void sayAnew(store));
  return store;
}

function journalOf(
  opened: Promise<Journal>,
  shrink: (file: Blob, watch: Watch) => Promise<KeptPhoto>,
): StateCreator<JournalState> {
  return (set, get) => {
    const refresh = async () => {
      const journal = await opened;
      const lists = await listsOf(journal);
      const minded = await mindedOf(journal, get().keptAs, lists.batches);
      set({ ...lists, minded, edition: get().edition + 1, trouble: null });
    };
    const attempt = async <T>(work: (journal: Journal) => Promise<T>, watch?: Watch): Promise<T | null> => {
      let done: T;
      try {
        done = await work(await opened);
      } catch (error) {
        if (watch?.signal?.aborted) throw watch.signal.reason;
        set({ trouble: get().status === 'refused' ? openingTrouble(error) : troubleOf(error) });
        return null;
      }
      set({ added: get().added + 1 });
      // What was added is kept, whether or not the lists can be read just now.
      await refresh().catch(() => set({ trouble: 'unreadable' }));
      return done;
    };
    const historyOf = async (batch: RecordId, watch?: Watch) => {
      const records = await (await opened).batch(batch, watch);
      return records && batchHistory(records);
    };
    return {
      ...{
        status: 'opening',
        batches: [],
        machines: [],
        keptAs: {},
        minded: {},
        edition: 0,
        added: 0,
        restored: 0,
        trouble: null,
      },
      opened,
      refresh,
      historyOf,
      propose: proposing(set, historyOf),
      keep: async (photoId, check, watch = {}) => {
        const kept = await attempt(async (journal) => {
          const added = await keepCheck(journal, check, shrink, partOf(watch, 0, 0.95));
          set({ keptAs: { ...get().keptAs, [photoId]: added } });
          return added;
        }, watch);
        return kept !== null;
      },
      ...aboutKept(set, get),
      begin: (batch) => attempt((journal) => beginBatch(journal, batch)),
      name: async (photo, stones) =>
        (await attempt((journal) => nameStones(journal, photo, stones).then(() => true))) !== null,
      say: async (sayings) => {
        const records = sayings.map((saying) => ({ ...saying, id: recordId() }));
        return attempt((journal) => journal.add(records).then(() => records.map(({ id }) => id)));
      },
      takeIn: (file, watch) => attempt((journal) => takeInBundle(journal, file, watch), watch),
      photoOf: async (key) => (await opened).photo(key),
    };
  };
}

type Reach = Parameters<StateCreator<JournalState>>;

function proposing(set: Reach[0], historyOf: JournalState['historyOf']): JournalState['propose'] {
  return async ({ report }, batch, faceOf, watch) => {
    try {
      const history = batch === null ? null : await historyOf(batch, watch);
      const seen = report.stones.map(({ id, look }) => ({ place: id, look }));
      return proposeStones(seen, history ?? { checks: [], stones: [] }, faceOf);
    } catch {
      watch?.signal?.throwIfAborted();
      set({ trouble: 'unreadable' });
      return null;
    }
  };
}

/** Where photos at hand were kept, and taking that back. */
function aboutKept(set: Reach[0], get: Reach[1]): Pick<JournalState, 'recall' | 'withdraw' | 'unkeep'> {
  return {
    recall: (keptAs) => {
      set({ keptAs: { ...get().keptAs, ...keptAs } });
      get()
        .refresh()
        .catch(() => set({ trouble: 'unreadable' }));
    },
    withdraw: async (batch, of, isWithdrawn) =>
      (await get().say(of.map((one) => ({ kind: 'withdrawal', batch, of: one, isWithdrawn })))) !== null,
    unkeep: async (photoId) => {
      const { [photoId]: kept, ...others } = get().keptAs;
      if (kept === undefined) return false;
      set({ keptAs: others });
      const done = await get().withdraw(kept.batch, kept.fresh, true);
      if (!done) set({ keptAs: { ...get().keptAs, [photoId]: kept } });
      return done;
    },
  };
}

/** Verdicts in mind are sentences: they are worked out again in the language now spoken. */
async function sayAnew(store: StoreApi<JournalState>): Promise<void> {
  const { opened, keptAs, batches } = store.getState();
  if (Object.keys(keptAs).length === 0) return;
  try {
    const minded = await mindedOf(await opened, keptAs, batches);
    // What was kept meanwhile has been said in that language already.
    if (store.getState().keptAs === keptAs) store.setState({ minded });
  } catch {
    store.setState({ trouble: 'unreadable' });
  }
}

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
