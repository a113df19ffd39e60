import { Dexie } from 'dexie';
import { batchDigest } from '../history/batchDigest';
import type { BatchRecords } from '../history/batchHistory';
import { currentRecords } from '../history/currentRecords';
import { withdrawnIds } from '../history/withdrawnIds';
import type { tellerOf } from '../progress/watch';
import { DifferingRecord } from './differingRecord';
import { isSame, mergeRecords } from './mergeRecords';
import type { Tables } from './openDatabase';
import type { KeptPhoto } from './openJournal';
import { goOnAfter } from './recordId';
import type { BatchRecord, JournalRecord, RecordId, RecordKind, WithdrawalRecord } from './records';

export type OfKind<K extends RecordKind> = Extract<JournalRecord, { kind: K }>;
type OfBatch = Extract<JournalRecord, { readonly batch: RecordId }>['kind'];

type Teller = ReturnType<typeof tellerOf>;

/** Read or written at a time; in between the page has its turn, since the database answers each piece anew. */
const PIECE = 16;
/** Of records other than checks, which are a hundredth as large. */
const SMALL_PIECE = 512;

const piecesOf = <T>(things: readonly T[], size = PIECE): T[][] =>
  Array.from({ length: Math.ceil(things.length / size) }, (_, i) => things.slice(size * i, size * (i + 1)));

/** Checks and other records, each kind of them in pieces as large as may be. */
function recordPieces(records: readonly JournalRecord[]): JournalRecord[][] {
  const isCheck = ({ kind }: JournalRecord) => kind === 'check';
  return [
    ...piecesOf(records.filter(isCheck)),
    ...piecesOf(
      records.filter((record) => !isCheck(record)),
      SMALL_PIECE,
    ),
  ];
}

/** Records of these ids, in their order; those that are gone are left out. */
export async function byPieces(records: Tables['records'], ids: readonly RecordId[], tell: Teller) {
  const found: JournalRecord[] = [];
  for (const [i, piece] of piecesOf(ids).entries()) {
    tell((PIECE * i) / ids.length);
    found.push(...(await records.bulkGet(piece)).filter((one) => one !== undefined));
  }
  tell(1);
  return found;
}

/**
 * Runs within a transaction, so it may wait for nothing but the database. What it throws undoes all of it.
 *
 * @returns Ids of records, and keys of photos, that were not there.
 */
export async function addAll(
  { records, photos, digests }: Omit<Tables, 'additions'>,
  added: readonly JournalRecord[],
  pictures: readonly KeptPhoto[],
  tell: Teller,
): Promise<{ records: RecordId[]; photos: string[] }> {
  const fresh: { records: RecordId[]; photos: string[] } = { records: [], photos: [] };
  for (const [i, piece] of piecesOf(pictures).entries()) {
    tell((0.2 * PIECE * i) / pictures.length);
    const held = await photos.bulkGet(piece.map(({ key }) => key));
    const missing = piece.filter((_, k) => held[k] === undefined);
    await photos.bulkAdd(missing);
    fresh.photos.push(...missing.map(({ key }) => key));
  }
  let done = 0;
  for (const piece of recordPieces(added)) {
    tell(0.2 + (0.4 * done) / added.length);
    done += piece.length;
    const merged = mergeRecords(piece, []);
    const known = await records.bulkGet(merged.map(({ id }) => id));
    const differing = merged.find((one, k) => known[k] !== undefined && !isSame(one, known[k]));
    if (differing) throw new DifferingRecord(differing.id);
    const missing = merged.filter((_, k) => known[k] === undefined);
    await records.bulkAdd(missing);
    fresh.records.push(...missing.map(({ id }) => id));
    goOnAfter(merged.at(-1)?.id ?? '');
  }
  await digestAll({ records, digests }, added, (share) => tell(0.6 + 0.4 * share));
  return fresh;
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
export async function digestAll(
  { records, digests }: Pick<Tables, 'records' | 'digests'>,
  changed: readonly JournalRecord[],
  tell: Teller = () => {},
): Promise<void> {
  const touched = batchesOf(changed);
  const present = new Map((await batchesIn(records)).map((batch) => [batch.id, batch]));
  for (const [i, id] of [...touched].entries()) {
    const batch = present.get(id);
    const tellOf = (share: number) => tell((i + share) / touched.size);
    if (batch) await digests.put(batchDigest(await recordsOf(records, batch, tellOf)));
    else await digests.delete(id);
  }
}

/** Every batch as it was last said, but for those withdrawn. */
async function batchesIn(records: Tables['records']): Promise<BatchRecord[]> {
  const of = (kind: RecordKind) => records.where('kind').equals(kind).toArray();
  const withdrawn = withdrawnIds((await of('withdrawal')) as WithdrawalRecord[]);
  return currentRecords((await of('batch')) as BatchRecord[]).filter(({ id }) => !withdrawn.has(id));
}

export async function batchRecords(
  records: Tables['records'],
  batch: RecordId,
  tell: Teller,
): Promise<BatchRecords | null> {
  const own = (await batchesIn(records)).find(({ id }) => id === batch);
  return own ? recordsOf(records, own, tell) : null;
}

/** Checks, which are nearly all of it, piece by piece. */
async function recordsOf(
  records: Tables['records'],
  batch: BatchRecord,
  tell: Teller,
): Promise<BatchRecords> {
  const of = (kind: OfBatch) =>
    records.where('[batch+kind+id]').between([batch.id, kind, Dexie.minKey], [batch.id, kind, Dexie.maxKey]);
  const ofKind = async <K extends OfBatch>(kind: K) => (await of(kind).toArray()) as unknown as OfKind<K>[];
  const checks = await byPieces(records, await of('check').primaryKeys(), tell);
  return {
    batch,
    runs: await ofKind('run'),
    stones: await ofKind('stone'),
    checks: checks as OfKind<'check'>[],
    identities: await ofKind('identity'),
    decisions: await ofKind('decision'),
    withdrawals: await ofKind('withdrawal'),
  };
}
