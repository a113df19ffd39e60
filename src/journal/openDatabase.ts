import { Dexie, type Table, type Transaction } from 'dexie';
import type { BatchDigest } from '../history/batchDigest';
import { type Addition, additionsOf } from './additions';
import { digestAll } from './journalRecords';
import { NewerJournal } from './newerJournal';
import type { KeptPhoto } from './openJournal';
import { patiently } from './patiently';
import { recordId } from './recordId';
import type { JournalRecord } from './records';
import { type AnyRecord, RECORDS_VERSION, upgradeRecords } from './upgradeRecords';

/** Schemas by version, the newest last. A version that was ever released is never edited: add the next one after it. */
const SCHEMAS: readonly Readonly<Record<string, string>>[] = [
  { records: '&id, kind, [kind+batch+id], [kind+check]', photos: '&key' },
  { records: '&id, kind, [batch+kind+id]', photos: '&key', digests: '&batch' },
  // Batches have materials and a source.
  { records: '&id, kind, [batch+kind+id]', photos: '&key', digests: '&batch' },
  // What was added when is noted, so that the safety copy can tell what is gone. The records stay as they were.
  { records: '&id, kind, [batch+kind+id]', photos: '&key', digests: '&batch', additions: '&id' },
];

export interface Tables {
  readonly records: Table<JournalRecord, string>;
  readonly photos: Table<KeptPhoto, string>;
  readonly digests: Table<BatchDigest, string>;
  readonly additions: Table<Addition, string>;
}

export function tablesOf(named: (table: keyof Tables) => Table): Tables {
  return {
    records: named('records'),
    photos: named('photos'),
    digests: named('digests'),
    additions: named('additions'),
  };
}

/**
 * Opens the database of a journal, bringing an older one up to date.
 *
 * @throws DOMException when the browser forbids storage.
 * @throws NewerJournal for one that a newer edition of this program has brought up to date.
 */
export async function openDatabase(name: string): Promise<Dexie> {
  // Acknowledged only when it has reached the disk: years of records are worth the milliseconds.
  const db = new Dexie(name, { chromeTransactionDurability: 'strict' });
  SCHEMAS.forEach((schema, i) => {
    const version = db.version(i + 1).stores(schema);
    if (i > 0) version.upgrade((transaction) => upgradeAll(transaction, i + 1));
  });
  // Left alone, Dexie opens it again at once, and opens one of any newer version: records of this one would get into it.
  db.on('versionchange', () => {
    db.close();
    return false;
  });
  db.on('ready', () => checkVersion(db.backendDB(), db), true);
  await patiently(async () => {
    // Where the browser tells it, before Dexie puts what it misses into a newer one.
    checkVersion(
      (await indexedDB.databases?.())?.find((one) => one.name === name),
      db,
    );
    await db.open();
  });
  return db;
}

/** Dexie gives a database ten times the number of its version. */
function checkVersion(found: { readonly version?: number } | undefined, db: Dexie): void {
  if ((found?.version ?? 0) <= 10 * SCHEMAS.length) return;
  db.close();
  throw new NewerJournal();
}

/** Brings the records from the version before to this one. */
async function upgradeAll(transaction: Transaction, version: number): Promise<void> {
  if (version > RECORDS_VERSION) return noteAll(tablesOf((table) => transaction.table(table)));
  // Tables of later versions are not there yet.
  const [records, digests]: [Tables['records'], Tables['digests']] = [
    transaction.table('records'),
    transaction.table('digests'),
  ];
  const old = (await records.toArray()) as unknown as AnyRecord[];
  const upgraded = upgradeRecords(old, version - 1, version);
  await records.bulkPut(upgraded);
  if (version === RECORDS_VERSION) await digestAll({ records, digests }, upgraded);
}

/** Notes what an older edition added. */
async function noteAll({ records, photos, additions }: Tables): Promise<void> {
  const ids = await records.toCollection().primaryKeys();
  const keys = await photos.toCollection().primaryKeys();
  await additions.bulkAdd(additionsOf(recordId(), ids, keys));
}
