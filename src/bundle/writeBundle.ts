import type { KeptPhoto } from '../journal/openJournal';
import type { JournalRecord } from '../journal/records';
import { RECORDS_VERSION } from '../journal/upgradeRecords';
import { BundleError } from './bundleError';
import { BUNDLE_FORMAT, BUNDLE_LIMITS, JOURNAL_FILE, pictureName, SCHEMA_FILE } from './bundleFormat';
import { checkPicture } from './checkPicture';
import schema from './journal.schema.json';
import { recordsIn } from './readRecords';
import { type ZipFile, zipOf } from './zipOf';

/** What a bundle carries: a whole journal, or the part of it that is to travel. */
export interface BundleContents {
  readonly records: readonly JournalRecord[];
  readonly photos: readonly KeptPhoto[];
}

/**
 * Packs records and photos into one zip: `journal.json`, its schema, and the pictures under their keys.
 *
 * The same contents give the same bytes, in whatever order they come. In memory at once are the records, their JSON
 * twice and one picture; pictures are otherwise left where their Blobs have them.
 *
 * @returns A zip that `readBundle` takes in.
 * @throws BundleError `unwritable` when that would not be so, or `too-large`.
 */
export async function writeBundle(contents: BundleContents): Promise<Blob> {
  try {
    return await zipOf(await filesOf(contents));
  } catch (error) {
    const isUnfit = error instanceof BundleError && error.code !== 'too-large';
    throw isUnfit ? new BundleError('unwritable', error.detail) : error;
  }
}

async function filesOf({ records, photos }: BundleContents): Promise<ZipFile[]> {
  const byKey = new Map(photos.map((photo) => [photo.key, photo]));
  const sorted = [...byKey.values()].sort((a, b) => (a.key < b.key ? -1 : 1));
  const pictures = sorted.flatMap(({ key, photo, thumbnail }): ZipFile[] => [
    { name: pictureName('photo', key), content: photo, isDeflated: false },
    { name: pictureName('thumbnail', key), content: thumbnail, isDeflated: false },
  ]);
  for (const { name, content } of pictures) await checkPicture(name, content);
  return [
    { name: JOURNAL_FILE, content: journalText(recordsIn(records)), isDeflated: true },
    { name: SCHEMA_FILE, content: new Blob([JSON.stringify(schema)]), isDeflated: true },
    ...pictures,
  ];
}

/** One record a line, so that a person and a comparison of two files find their way. */
function journalText(records: readonly JournalRecord[]): Blob {
  const head = `{"format":${JSON.stringify(BUNDLE_FORMAT)},"version":${RECORDS_VERSION},"records":[`;
  const lines = records.map((record, i) => `${i === 0 ? '\n' : ',\n'}${JSON.stringify(record)}`);
  const text = new Blob([head, ...lines, '\n]}\n']);
  if (text.size > BUNDLE_LIMITS.journalBytes) throw new BundleError('too-large');
  return text;
}
