import type { KeptPhoto } from '../journal/openJournal';
import type { JournalRecord } from '../journal/records';
import { RECORDS_VERSION } from '../journal/upgradeRecords';
import { type Pace, paceOf } from '../progress/pace';
import type { Watch } from '../progress/watch';
import { BundleError } from './bundleError';
import { BUNDLE_FORMAT, BUNDLE_LIMITS, JOURNAL_FILE, pictureName, SCHEMA_FILE } from './bundleFormat';
import { checkPicture } from './checkPicture';
import schema from './journal.schema.json';
import { recordsInTurns } from './readRecords';
import { type ZipFile, zipOf } from './zipOf';

/** Share of the time after which records and pictures are checked, and only packing is left (`npm run bench:bundle`). */
const LISTED = 0.4;
/** Records that are put into words at a time. */
const LINES = 32;

/** What a bundle carries: a whole journal, or the part of it that is to travel. */
export interface BundleContents {
  readonly records: readonly JournalRecord[];
  readonly photos: readonly KeptPhoto[];
}

/**
 * Packs records and photos into one zip: `journal.json`, its schema, and the pictures under their keys.
 *
 * The same contents give the same bytes, in whatever order they come. In memory at once are the records, their JSON and
 * a piece of one picture; pictures are otherwise left where their Blobs have them.
 *
 * @param watch - Of 500 checks it takes 3 s on a computer, so several on a phone.
 * @returns A zip that `readBundle` takes in.
 * @throws BundleError `unwritable` when that would not be so, or `too-large`.
 * @throws The reason for which it was called off.
 */
export async function writeBundle(contents: BundleContents, watch: Watch = {}): Promise<Blob> {
  const pace = paceOf(watch);
  try {
    return await zipOf(await filesOf(contents, pace.part(0, LISTED)), pace.part(LISTED, 1));
  } catch (error) {
    const isUnfit = error instanceof BundleError && error.code !== 'too-large';
    throw isUnfit ? new BundleError('unwritable', error.part) : error;
  }
}

async function filesOf({ records, photos }: BundleContents, pace: Pace): Promise<ZipFile[]> {
  const byKey = new Map(photos.map((photo) => [photo.key, photo]));
  const sorted = [...byKey.values()].sort((a, b) => (a.key < b.key ? -1 : 1));
  const pictures = sorted.flatMap(({ key, photo, thumbnail }): ZipFile[] => [
    { name: pictureName('photo', key), content: photo, isDeflated: false },
    { name: pictureName('thumbnail', key), content: thumbnail, isDeflated: false },
  ]);
  const checked = await recordsInTurns(records, pace.part(0, 0.5));
  const journal = await journalText(checked, pace.part(0.5, 0.8));
  for (const [i, { name, content }] of pictures.entries()) {
    checkPicture(name, content.size, new Uint8Array(await content.slice(0, 3).arrayBuffer()));
    await pace.at(0.8 + (0.2 * i) / pictures.length);
  }
  return [
    { name: JOURNAL_FILE, content: journal, isDeflated: true },
    { name: SCHEMA_FILE, content: new Blob([JSON.stringify(schema)]), isDeflated: true },
    ...pictures,
  ];
}

/** One record a line, so that a person and a comparison of two files find their way. */
async function journalText(records: readonly JournalRecord[], pace: Pace): Promise<Blob> {
  const head = `{"format":${JSON.stringify(BUNDLE_FORMAT)},"version":${RECORDS_VERSION},"records":[`;
  const parts: Blob[] = [];
  for (let from = 0; from < records.length; from += LINES) {
    const lines = records.slice(from, from + LINES).map((record) => JSON.stringify(record));
    parts.push(new Blob([from === 0 ? '\n' : ',\n', lines.join(',\n')]));
    await pace.at(Math.min(1, (from + LINES) / records.length));
  }
  const text = new Blob([head, ...parts, '\n]}\n']);
  if (text.size > BUNDLE_LIMITS.journalBytes) throw new BundleError('too-large');
  return text;
}
