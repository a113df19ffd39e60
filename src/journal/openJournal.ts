import type { BatchDigest } from '../history/batchDigest';
import type { BatchRecords } from '../history/batchHistory';
import { tellerOf, type Watch } from '../progress/watch';
import { type Addition, additionsOf } from './additions';
import { addAll, batchRecords, byPieces, type OfKind } from './journalRecords';
import { makeWhole, type NotedAdditions } from './makeWhole';
import { openDatabase, type Tables, tablesOf } from './openDatabase';
import { goOnAfter, recordId } from './recordId';
import type { JournalRecord, RecordId, RecordKind } from './records';
import { openSafetyCopy, type SafetyCopy } from './safetyCopy';

/** A photo as the journal keeps it. */
export interface KeptPhoto {
  /** SHA-256 of the photo, hexadecimal: the same photo is kept once. */
  readonly key: string;
  readonly photo: Blob;
  readonly thumbnail: Blob;
}

/** The journal in this browser's IndexedDB. Records are added and never changed. */
export interface Journal {
  /**
   * Adds records and photos not kept yet, as `mergeRecords` does, but that what is kept is never replaced: all of them
   * or, when the storage is full or it is called off, none. 500 checks take a second or two on a computer.
   *
   * @throws DifferingRecord when one differs from what is kept under its id.
   */
  readonly add: (
    records: readonly JournalRecord[],
    photos?: readonly KeptPhoto[],
    watch?: Watch,
  ) => Promise<void>;
  /** Every record there is when it is asked, in the order of their ids; 500 checks take a second on a computer. */
  readonly all: (watch?: Watch) => Promise<JournalRecord[]>;
  readonly ofKind: <K extends RecordKind>(kind: K) => Promise<OfKind<K>[]>;
  /** All records of a batch; null for an unknown one. Twenty checks take 0.1 s on a computer, hundreds a second or more. */
  readonly batch: (batch: RecordId, watch?: Watch) => Promise<BatchRecords | null>;
  /** One for each batch, in no order. */
  readonly digests: () => Promise<BatchDigest[]>;
  readonly photo: (key: string) => Promise<KeptPhoto | null>;
  readonly recordIds: () => Promise<string[]>;
  /** Ids of every check's records, one for each photo kept, in order; 10,000 take 0.1 s on a computer. */
  readonly checkIds: () => Promise<RecordId[]>;
  readonly photoKeys: () => Promise<string[]>;
  /** Told once journal and safety copy are level: how many records that were gone came back. */
  readonly whole: Promise<number>;
  readonly close: () => void;
}

/**
 * Opens the journal, bringing an older one up to date.
 *
 * @param name - Name of the database.
 * @param copyName - Name of its safety copy; null for a journal that needs none.
 * @throws DOMException when the browser forbids storage, as in some private windows.
 * @throws NewerJournal for one that a newer edition of this program has brought up to date.
 */
export async function openJournal(
  name = 'glintgrade journal',
  copyName: string | null = null,
): Promise<Journal> {
  const db = await openDatabase(name);
  const tables = tablesOf((table) => db.table(table));
  const { records, photos, digests, additions } = tables;
  // Dexie holds a transaction open over awaits only of a function that is itself async.
  const together = <T>(work: () => Promise<T>) => db.transaction('rw', Object.values(tables), work);
  const noted = notedAdditions(tables, together);
  const opening = copyName === null ? Promise.resolve(null) : openSafetyCopy(copyName);
  const newest = (await records.toCollection().last())?.id;
  if (newest !== undefined) goOnAfter(newest);
  return {
    add: async (added, pictures = [], watch = {}) => {
      const fresh = await together(async () => {
        const { records: ids, photos: keys } = await addAll(tables, added, pictures, tellerOf(watch));
        const pieces = additionsOf(recordId(), ids, keys);
        await additions.bulkAdd(pieces);
        return pieces;
      });
      const copying = copyPieces(fresh, noted, await opening);
      // One check is copied at once; what takes longer, such as a bundle, while the person goes on.
      if (fresh.length <= 1) await copying;
    },
    whole: opening.then((copy) => (copy === null ? 0 : makeWhole(noted, copy))).catch(() => 0),
    all: async (watch = {}) => byPieces(records, await records.toCollection().primaryKeys(), tellerOf(watch)),
    ofKind: async <K extends RecordKind>(kind: K) =>
      (await records.where('kind').equals(kind).sortBy('id')) as OfKind<K>[],
    batch: (batch, watch = {}) => batchRecords(records, batch, tellerOf(watch)),
    digests: () => digests.toArray(),
    photo: async (key) => (await photos.get(key)) ?? null,
    recordIds: () => records.toCollection().primaryKeys(),
    checkIds: async () => (await records.where('kind').equals('check').primaryKeys()).sort(),
    photoKeys: async () => (await photos.toCollection().primaryKeys()).sort(),
    close: () => db.close(),
  };
}

/** The journal's additions, for keeping it level with its safety copy. */
function notedAdditions(
  tables: Tables,
  together: <T>(work: () => Promise<T>) => PromiseLike<T>,
): NotedAdditions {
  const { records, photos, additions } = tables;
  const isThere = <T>(one: T | undefined) => one !== undefined;
  return {
    ids: () => additions.toCollection().primaryKeys(),
    read: async (id) => {
      const addition = await additions.get(id);
      if (!addition) return null;
      return {
        addition,
        records: (await records.bulkGet([...addition.records])).filter(isThere),
        photos: (await photos.bulkGet([...addition.photos])).filter(isThere),
      };
    },
    restore: async (piece) =>
      together(async () => {
        const fresh = await addAll(tables, piece.records, piece.photos, tellerOf({}));
        await additions.put(piece.addition);
        return fresh.records.length;
      }),
  };
}

/** Never fails: what is not copied now is when the journal is opened again. */
async function copyPieces(
  pieces: readonly Addition[],
  noted: NotedAdditions,
  copy: SafetyCopy | null,
): Promise<void> {
  try {
    for (const { id } of pieces) {
      const piece = copy && (await noted.read(id));
      if (copy && piece) await copy.keep(piece.addition, piece);
    }
  } catch {
    // The journal was closed meanwhile.
  }
}
