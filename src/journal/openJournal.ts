import { Dexie, type Table } from 'dexie';
import { mergeRecords } from './mergeRecords';
import type { JournalRecord, RecordId, RecordKind } from './records';

/** A photo as the journal keeps it. */
export interface KeptPhoto {
  /** SHA-256 of the photo, hexadecimal: the same photo is kept once. */
  readonly key: string;
  readonly photo: Blob;
  readonly thumbnail: Blob;
}

type OfKind<K extends RecordKind> = Extract<JournalRecord, { kind: K }>;

/** The journal in this browser's IndexedDB. Records are added and never changed. */
export interface Journal {
  /** Adds records as `mergeRecords` does, all of them or, when the storage is full, none. */
  readonly add: (records: readonly JournalRecord[]) => Promise<void>;
  readonly all: () => Promise<JournalRecord[]>;
  readonly ofKind: <K extends RecordKind>(kind: K) => Promise<OfKind<K>[]>;
  /** Records of one kind that belong to a batch. */
  readonly ofBatch: <K extends 'run' | 'stone' | 'check'>(kind: K, batch: RecordId) => Promise<OfKind<K>[]>;
  /** The newest record of one kind of a batch; null without one. */
  readonly lastOfBatch: <K extends 'run' | 'check'>(kind: K, batch: RecordId) => Promise<OfKind<K> | null>;
  readonly countOfBatch: (kind: 'stone' | 'check', batch: RecordId) => Promise<number>;
  /** What was said about the stones of a check. */
  readonly ofCheck: <K extends 'identity' | 'decision'>(kind: K, check: RecordId) => Promise<OfKind<K>[]>;
  readonly keepPhoto: (photo: KeptPhoto) => Promise<void>;
  readonly photo: (key: string) => Promise<KeptPhoto | null>;
  readonly close: () => void;
}

/** Schemas by version, the newest last. A version that was ever released is never edited: add the next one after it. */
const SCHEMAS: readonly Readonly<Record<string, string>>[] = [
  { records: '&id, kind, [kind+batch+id], [kind+check]', photos: '&key' },
];

/**
 * Opens the journal, bringing an older one up to date.
 *
 * @param name - Name of the database.
 * @throws DOMException when the browser forbids storage, as in some private windows.
 */
export async function openJournal(name = 'glintgrade journal'): Promise<Journal> {
  const db = new Dexie(name);
  SCHEMAS.forEach((schema, i) => {
    db.version(i + 1).stores(schema);
  });
  await db.open();
  const records: Table<JournalRecord, string> = db.table('records');
  const photos: Table<KeptPhoto, string> = db.table('photos');
  const ofBatch = (kind: RecordKind, batch: RecordId) =>
    records.where('[kind+batch+id]').between([kind, batch, Dexie.minKey], [kind, batch, Dexie.maxKey]);
  return {
    add: (added) =>
      db.transaction('rw', records, async () => {
        const known = await records.bulkGet(added.map(({ id }) => id));
        await records.bulkPut(
          mergeRecords(
            known.filter((one) => one !== undefined),
            added,
          ),
        );
      }),
    all: () => records.orderBy('id').toArray(),
    ofKind: async <K extends RecordKind>(kind: K) =>
      (await records.where('kind').equals(kind).sortBy('id')) as OfKind<K>[],
    ofBatch: async <K extends 'run' | 'stone' | 'check'>(kind: K, batch: RecordId) =>
      (await ofBatch(kind, batch).toArray()) as OfKind<K>[],
    lastOfBatch: async <K extends 'run' | 'check'>(kind: K, batch: RecordId) =>
      ((await ofBatch(kind, batch).last()) as OfKind<K> | undefined) ?? null,
    countOfBatch: (kind, batch) => ofBatch(kind, batch).count(),
    ofCheck: async <K extends 'identity' | 'decision'>(kind: K, check: RecordId) =>
      (await records.where('[kind+check]').equals([kind, check]).sortBy('id')) as OfKind<K>[],
    keepPhoto: async (photo) => {
      await photos.put(photo);
    },
    photo: async (key) => (await photos.get(key)) ?? null,
    close: () => db.close(),
  };
}
