import { Dexie } from 'dexie';
import { DEFAULT_LIMITS } from '../../../src/grading/limits';
import { openJournal } from '../../../src/journal/openJournal';
import { openVisit } from '../../../src/journal/openVisit';
import { recordId } from '../../../src/journal/recordId';
import type { JournalRecord } from '../../../src/journal/records';
import { gradePhoto } from '../../../src/state/gradePhoto';
import { takeInBundle } from '../../../src/state/journalExchange';
import { keepCheck } from '../../../src/state/keepCheck';
import { keptPhoto } from '../../../src/state/keptPhoto';
import { type CheckSo, inventedBatch, recordsOf } from '../../helpers/inventedBatch';
import { inventedReport } from '../../helpers/inventedReport';

/** What the page says to the test as it goes; `acknowledged` is what the person would have been told. */
export type Said =
  | {
      readonly kind: 'begun' | 'acknowledged';
      readonly records: readonly string[];
      readonly photos: readonly string[];
    }
  | { readonly kind: 'laid' | 'dropped'; readonly photo: string }
  | { readonly kind: 'migrating'; readonly database: string; readonly count: number };

/** What a journal and the photos at hand hold, and what is wrong with them. */
export interface Found {
  readonly records: readonly string[];
  readonly photos: readonly string[];
  readonly atHand: readonly string[];
  readonly halves: readonly string[];
  /** Records that the browser's database had lost and that came back from the safety copy. */
  readonly restored: number;
}

declare global {
  interface Window {
    say: (said: Said) => Promise<void>;
    work: Readonly<Record<'save' | 'import' | 'migration' | 'deletion', () => Promise<void>>>;
    look: () => Promise<Found>;
    lookMigrated: (database: string) => Promise<number>;
  }
}

const STONES = 12;

/** The journal with its safety copy, as the page opens it. */
const openOwn = () => openJournal('glintgrade journal', 'glintgrade journal copy');

/** A small picture, never twice the same. */
async function picture(): Promise<Blob> {
  const canvas = new OffscreenCanvas(640, 426);
  const context = canvas.getContext('2d')!;
  for (let k = 0; k < 400; k++) {
    context.fillStyle = `hsl(${360 * Math.random()} 40% ${100 * Math.random()}%)`;
    context.fillRect(640 * Math.random(), 426 * Math.random(), 60, 40);
  }
  return canvas.convertToBlob({ type: 'image/jpeg', quality: 0.9 });
}

/** Keeps one check after the other, as the page does. */
async function save(): Promise<void> {
  const journal = await openOwn();
  const graded = gradePhoto(inventedReport(STONES), {
    step: 'coarse',
    material: null,
    limits: DEFAULT_LIMITS,
  });
  for (;;) {
    const stones = graded.report.stones.map(({ id }) => ({ place: id, stone: null, confidence: null }));
    const setting = {
      step: 'coarse',
      material: null,
      limits: null,
      day: '2026-03-09',
      faceOf: null,
    } as const;
    const check = { file: await picture(), graded, ...setting, batch: { name: 'Brook pebbles' }, stones };
    const kept = await keepCheck(journal, check, keptPhoto);
    await window.say({ kind: 'acknowledged', records: kept.fresh, photos: [] });
  }
}

/** Takes in one bundle after the other: each all or nothing. */
async function take(): Promise<void> {
  const journal = await openOwn();
  const { writeBundle } = await import('../../../src/bundle/writeBundle');
  for (;;) {
    const photos = await Promise.all(Array.from({ length: 6 }, async () => keptPhoto(await picture())));
    const records = freshBatch(photos.map(({ key }) => key));
    const said = { records: records.map(({ id }) => id), photos: photos.map(({ key }) => key) };
    const bundle = await writeBundle({ records, photos });
    await window.say({ kind: 'begun', ...said });
    await takeInBundle(journal, bundle);
    await window.say({ kind: 'acknowledged', ...said });
  }
}

/** Records of a batch under ids of their own. */
function freshBatch(photos: readonly string[]): JournalRecord[] {
  const checks = photos.map(
    (_, k): CheckSo => ({
      step: 'coarse',
      day: 7 * (k + 1),
      stones: Array.from({ length: STONES }, () => ({})),
    }),
  );
  const invented = recordsOf(inventedBatch(checks));
  const ids = new Map(invented.map(({ id }) => [id, recordId()]));
  const text = [...ids].reduce(
    (rest, [old, fresh]) => rest.replaceAll(`"${old}"`, `"${fresh}"`),
    JSON.stringify(invented),
  );
  let next = 0;
  return (JSON.parse(text) as JournalRecord[]).map((record) =>
    record.kind === 'check' ? { ...record, photo: photos[next++] ?? null } : record,
  );
}

/** Makes a journal of the second version and opens it with today's program. */
async function migrate(): Promise<void> {
  for (;;) {
    const database = `migrated ${recordId()}`;
    const records = Array.from({ length: 8 }, () => freshBatch([])).flat();
    const many = Array.from({ length: 20 }, () => freshBatch(['a', 'b'])).flat();
    const old = [...records, ...many].map((record) => {
      if (record.kind !== 'batch') return record;
      const { materials: _, source: __, ...second } = record;
      return second;
    });
    const db = new Dexie(database, { chromeTransactionDurability: 'strict' });
    db.version(1).stores({ records: '&id, kind, [kind+batch+id], [kind+check]', photos: '&key' });
    db.version(2).stores({ records: '&id, kind, [batch+kind+id]', photos: '&key', digests: '&batch' });
    await db.open();
    await db.table('records').bulkAdd(old);
    db.close();
    await window.say({ kind: 'migrating', database, count: old.length });
    (await openJournal(database)).close();
  }
}

/** Lays photos down and takes every second one away again. */
async function deletePhotos(): Promise<void> {
  const visit = await openVisit<Blob, null>();
  for (;;) {
    const [stays, goes] = [recordId(), recordId()];
    for (const key of [stays, goes]) {
      await visit.put({ key, photo: await picture(), keptAs: null, day: '2026-03-09', madeBy: 'test' });
      await window.say({ kind: 'laid', photo: key });
    }
    await visit.drop(goes);
    await window.say({ kind: 'dropped', photo: goes });
  }
}

/** Everything there is, each photo read to its end. */
async function look(): Promise<Found> {
  const journal = await openOwn();
  const restored = await journal.whole;
  const records = await journal.all();
  const photos = await journal.photoKeys();
  const halves: string[] = [];
  for (const key of photos) {
    const kept = await journal.photo(key);
    for (const blob of [kept?.photo, kept?.thumbnail]) {
      const bytes = new Uint8Array((await blob?.arrayBuffer()) ?? new ArrayBuffer(0));
      // A JPEG begins with SOI and ends with EOI. Source: ITU-T T.81, table B.1.
      if (bytes[0] !== 0xff || bytes[1] !== 0xd8 || bytes.at(-2) !== 0xff || bytes.at(-1) !== 0xd9)
        halves.push(`photo ${key}`);
    }
  }
  const ids = new Set(records.map(({ id }) => id));
  const keys = new Set(photos);
  for (const record of records) {
    if (record.kind === 'check' && record.photo !== null && !keys.has(record.photo))
      halves.push(`check ${record.id}`);
    if ('batch' in record && !ids.has(record.batch)) halves.push(`${record.kind} ${record.id}`);
    if (record.kind === 'identity' && record.stones.some(({ stone }) => !ids.has(stone)))
      halves.push(`identity ${record.id}`);
  }
  const digests = await journal.digests();
  const batches = records.filter(({ kind }) => kind === 'batch');
  if (digests.length !== batches.length)
    halves.push(`${digests.length} digests of ${batches.length} batches`);
  journal.close();
  const visit = await openVisit<Blob, null>();
  const entries = await visit.all();
  for (const { key, photo } of entries)
    if ((await photo.arrayBuffer()).byteLength < 100) halves.push(`at hand ${key}`);
  return { records: [...ids], photos, atHand: entries.map(({ key }) => key), halves, restored };
}

async function lookMigrated(database: string): Promise<number> {
  const journal = await openJournal(database);
  const records = await journal.all();
  journal.close();
  await Dexie.delete(database);
  return records.every((record) => record.kind !== 'batch' || Array.isArray(record.materials))
    ? records.length
    : -1;
}

Object.assign(window, {
  work: { save, import: take, migration: migrate, deletion: deletePhotos },
  look,
  lookMigrated,
});
