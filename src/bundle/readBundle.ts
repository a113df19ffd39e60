import type { KeptPhoto } from '../journal/openJournal';
import { BundleError, shown } from './bundleError';
import { BUNDLE_LIMITS, JOURNAL_FILE, type PictureKind, pictureOf } from './bundleFormat';
import { checkPicture } from './checkPicture';
import { readRecords } from './readRecords';
import type { BundleContents } from './writeBundle';
import { packedPart, unpacked, type ZipEntry, zipEntries } from './zipEntries';

/**
 * Reads a bundle that this or an earlier version wrote; it is all taken in or refused. Merging it into a journal with
 * `mergeRecords` loses nothing of either, and doing so twice changes nothing.
 *
 * Nothing is unpacked before sizes and names are checked. In memory at once are the unpacked JSON, its text and its
 * records, up to 256 MiB each of the first two, and one picture; pictures are given as parts of the file itself.
 * Files of other names, such as an operating system's, are passed over.
 *
 * @param file - Any file.
 * @throws BundleError and nothing else.
 */
export async function readBundle(file: Blob): Promise<BundleContents> {
  const entries = await zipEntries(file);
  checkSizes(entries);
  checkNames(entries);
  const journal = entries.find(({ name }) => name === JOURNAL_FILE);
  if (!journal) throw new BundleError('no-journal');
  const records = readRecords(textOf(await unpacked(file, journal)));
  return { records, photos: await photosIn(file, entries) };
}

function checkSizes(entries: readonly ZipEntry[]): void {
  const total = entries.reduce((sum, { bytes }) => sum + bytes, 0);
  const isTooLarge = ({ name, bytes }: ZipEntry) =>
    bytes > (name === JOURNAL_FILE ? BUNDLE_LIMITS.journalBytes : BUNDLE_LIMITS.pictureBytes);
  const large = entries.find(isTooLarge);
  if (large) throw new BundleError('too-large', `It is about ${shown(large.name)}.`);
  if (total > BUNDLE_LIMITS.totalBytes || entries.length > BUNDLE_LIMITS.entries)
    throw new BundleError('too-large');
}

/** Names that would lie outside the folder they are unpacked into, and names given twice, are signs of tampering. */
function checkNames(entries: readonly ZipEntry[]): void {
  const names = new Set<string>();
  for (const { name } of entries) {
    const leadsOut = /^\/|^[a-z]:|\\|(^|\/)\.\.(\/|$)|\p{Cc}/iu.test(name);
    if (leadsOut || name === '' || names.has(name))
      throw new BundleError('bad-name', `The name is ${shown(name)}.`);
    names.add(name);
  }
}

function textOf(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new BundleError('broken-json');
  }
}

async function photosIn(file: Blob, entries: readonly ZipEntry[]): Promise<KeptPhoto[]> {
  const pictures: Readonly<Record<PictureKind, Map<string, Blob>>> = {
    photo: new Map(),
    thumbnail: new Map(),
  };
  for (const entry of entries) {
    const picture = pictureOf(entry.name);
    if (!picture) continue;
    const content = await pictureIn(file, entry);
    await checkPicture(entry.name, content);
    pictures[picture.kind].set(picture.key, content);
  }
  const { photo: photos, thumbnail: thumbnails } = pictures;
  const alone = [...photos.keys(), ...thumbnails.keys()].find(
    (key) => !(photos.has(key) && thumbnails.has(key)),
  );
  if (alone) throw new BundleError('bad-photo', `Of ${alone} there is not both photo and thumbnail.`);
  return [...photos]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, photo]) => ({ key, photo, thumbnail: thumbnails.get(key)! }));
}

/** Checked against its checksum, but left in the file where it lies there as it is. */
async function pictureIn(file: Blob, entry: ZipEntry): Promise<Blob> {
  const bytes = await unpacked(file, entry);
  if (entry.method !== 0) return new Blob([bytes], { type: 'image/jpeg' });
  const part = await packedPart(file, entry);
  return part.slice(0, part.size, 'image/jpeg');
}
