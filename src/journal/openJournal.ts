import { Dexie, type Table, type Transaction } from 'dexie';
import { type BatchDigest, batchDigest } from '../history/batchDigest';
import type { BatchRecords } from '../history/batchHistory';
import { currentRecords } from '../history/currentRecords';
import { mergeRecords } from './mergeRecords';
import type { BatchRecord, JournalRecord, RecordId, RecordKind } from './records';
import { type AnyRecord, RECORDS_VERSION, upgradeRecords } from './upgradeRecords';

/** A photo as the journal keeps it. */
export interface KeptPhoto {
  /** SHA-256 of the photo, hexadecimal: the same photo is kept once. */
  readonly key: string;
  readonly photo: Blob;
  readonly thumbnail: Blob;
}

type OfKind<K extends RecordKind> = Extract<JournalRecord, { kind: K }>;
type OfBatch = Extract<JournalRecord, { readonly batch: RecordId }>['kind'];

/** The journal in this browser's IndexedDB. Records are added and never changed. */
export interface Journal {
  /** Adds records as `mergeRecords` does, and photos not kept yet: all of them or, when the storage is full, none. */
  readonly add: (records: readonly JournalRecord[], photos?: readonly KeptPhoto[]) => Promise<void>;
  readonly all: () => Promise<JournalRecord[]>;
  readonly ofKind: <K extends RecordKind>(kind: K) => Promise<OfKind<K>[]>;
  /** All records of a batch; null for an unknown one. */
  readonly batch: (batch: RecordId) => Promise<BatchRecords | null>;
  /** One for each batch, in no order. */
  readonly digests: () => Promise<BatchDigest[]>;
  readonly photo: (key: string) => Promise<KeptPhoto | null>;
  readonly recordIds: () => Promise<string[]>;
  readonly photoKeys: () => Promise<string[]>;
  readonly close: () => void;
}

/** Schemas by version, the newest last. A version that was ever released is never edited: add the next one after it. */
const SCHEMAS: readonly Readonly<Record<string, string>>[] = [
  { records: '&id, kind, [kind+batch+id], [kind+check]', photos: '&key' },
  { records: '&id, kind, [batch+kind+id]', photos: '&key', digests: '&batch' },
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
    const version = db.version(i + 1).stores(schema);
    if (i === RECORDS_VERSION - 1) version.upgrade(upgradeAll);
  });
  await db.open();
  const { records, photos, digests } = tablesOf((table) => db.table(table));
  return {
    add: (added, pictures = []) =>
      db.transaction('rw', records, photos, digests, async () => {
        const held = await photos.bulkGet(pictures.map(({ key }) => key));
        await photos.bulkAdd(pictures.filter((_, i) => held[i] === undefined));
        const known = await records.bulkGet(added.map(({ id }) => id));
        const merged = mergeRecords(
          known.filter((one) => one !== undefined),
          added,
        );
        await records.bulkPut(merged);
        await digestAll({ records, digests }, merged);
      }),
    all: () => records.orderBy('id').toArray(),
    ofKind: async <K extends RecordKind>(kind: K) =>
      (await records.where('kind').equals(kind).sortBy('id')) as OfKind<K>[],
    batch: (batch) => batchRecords(records, batch),
    digests: () => digests.toArray(),
    photo: async (key) => (await photos.get(key)) ?? null,
    recordIds: () => records.toCollection().primaryKeys(),
    photoKeys: async () => (await photos.toCollection().primaryKeys()).sort(),
    close: () => db.close(),
  };
}

interface Tables {
  readonly records: Table<JournalRecord, string>;
  readonly photos: Table<KeptPhoto, string>;
  readonly digests: Table<BatchDigest, string>;
}

function tablesOf(named: (table: keyof Tables) => Table): Tables {
  return { records: named('records'), photos: named('photos'), digests: named('digests') };
}

async function upgradeAll(transaction: Transaction): Promise<void> {
  const { records, digests } = tablesOf((table) => transaction.table(table));
  const old = (await records.toArray()) as unknown as AnyRecord[];
  const upgraded = upgradeRecords(old, RECORDS_VERSION - 1);
  await records.bulkPut(upgraded);
  await digestAll({ records, digests }, upgraded);
}

/** Batches that records belong to. */
function batchesOf(records: readonly JournalRecord[]): Set<RecordId> {
  return new Set(
    records.flatMap((record) => {
      if (record.kind === 'batch') return [record.corrects ?? record.id];
      return 'batch' in record ? [record.batch] : [];
    }),
  );
}

/** Makes the digests of all batches anew that records belong to. */
async function digestAll(
  { records, digests }: Omit<Tables, 'photos'>,
  changed: readonly JournalRecord[],
): Promise<void> {
  const touched = batchesOf(changed);
  for (const batch of await batchesIn(records)) {
    if (touched.has(batch.id)) await digests.put(batchDigest(await recordsOf(records, batch)));
  }
}

/** Every batch as it was last said. */
async function batchesIn(records: Tables['records']): Promise<BatchRecord[]> {
  return currentRecords((await records.where('kind').equals('batch').toArray()) as BatchRecord[]);
}

async function batchRecords(records: Tables['records'], batch: RecordId): Promise<BatchRecords | null> {
  const own = (await batchesIn(records)).find(({ id }) => id === batch);
  return own ? recordsOf(records, own) : null;
}

async function recordsOf(records: Tables['records'], batch: BatchRecord): Promise<BatchRecords> {
  const ofKind = async <K extends OfBatch>(kind: K) =>
    (await records
      .where('[batch+kind+id]')
      .between([batch.id, kind, Dexie.minKey], [batch.id, kind, Dexie.maxKey])
      .toArray()) as unknown as OfKind<K>[];
  return {
    batch,
    runs: await ofKind('run'),
    stones: await ofKind('stone'),
    checks: await ofKind('check'),
    identities: await ofKind('identity'),
    decisions: await ofKind('decision'),
  };
}
