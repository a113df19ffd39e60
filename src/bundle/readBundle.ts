import { withoutMetadata } from '../image/withoutMetadata';
import type { KeptPhoto } from '../journal/openJournal';
import { type Pace, paceOf } from '../progress/pace';
import type { Watch } from '../progress/watch';
import { BundleError, shown } from './bundleError';
import { BUNDLE_LIMITS, JOURNAL_FILE, type PictureKind, pictureOf } from './bundleFormat';
import { checkPicture, checkPixels } from './checkPicture';
import { readRecords } from './readRecords';
import type { BundleContents } from './writeBundle';
import { checkApart, packedPart, unpacked, unpackedPart, type ZipEntry, zipEntries } from './zipEntries';

/** Shares of the time after which the journal is unpacked, and its records are checked, in Chromium with 500 photos. */
const [UNPACKED, CHECKED] = [0.2, 0.45];

/**
 * Reads a bundle that this or an earlier version wrote; it is all taken in or refused. Merging it into a journal with
 * `mergeRecords` loses nothing of either, and doing so twice changes nothing.
 *
 * Nothing is unpacked before sizes, names and places are checked, and nothing parsed before its depth and what it would
 * take in memory are. In memory at once are the unpacked JSON, up to 256 MiB, its records, and one picture; pictures are
 * given as parts of the file itself, but for those that another program packed.
 * Files of other names, such as an operating system's, are passed over.
 *
 * @param file - Any file.
 * @param watch - Of 500 checks it takes 2 s on a computer, so several on a phone.
 * @throws BundleError, or the reason for which it was called off, and nothing else.
 */
export async function readBundle(file: Blob, watch: Watch = {}): Promise<BundleContents> {
  const pace = paceOf(watch);
  const entries = await zipEntries(file);
  checkApart(entries);
  checkSizes(entries, file.size);
  checkNames(entries);
  const journal = entries.find(({ name }) => name === JOURNAL_FILE);
  if (!journal) throw new BundleError('no-journal');
  const json = await unpacked(file, journal, pace.part(0, UNPACKED));
  const records = await readRecords(json, pace.part(UNPACKED, CHECKED));
  return { records, photos: await photosIn(file, entries, pace.part(CHECKED, 1)) };
}

function checkSizes(entries: readonly ZipEntry[], fileBytes: number): void {
  const total = entries.reduce((sum, { bytes }) => sum + bytes, 0);
  const pictures = entries.reduce((sum, { name, bytes }) => sum + (pictureOf(name) ? bytes : 0), 0);
  const isTooLarge = ({ name, bytes }: ZipEntry) =>
    bytes > (name === JOURNAL_FILE ? BUNDLE_LIMITS.journalBytes : BUNDLE_LIMITS.pictureBytes);
  const large = entries.find(isTooLarge);
  if (large) throw new BundleError('too-large', (parts) => parts.about(shown(large.name)));
  const { totalBytes, entries: mostEntries, pictureBytes, timesUnpacked } = BUNDLE_LIMITS;
  const isBomb = pictures > pictureBytes + timesUnpacked * fileBytes;
  if (total > totalBytes || entries.length > mostEntries || isBomb) throw new BundleError('too-large');
}

/** Names that would lie outside the folder they are unpacked into, and names given twice, are signs of tampering. */
function checkNames(entries: readonly ZipEntry[]): void {
  const names = new Set<string>();
  for (const { name } of entries) {
    const leadsOut = /^\/|^[a-z]:|\\|(^|\/)\.\.(\/|$)|\p{Cc}/iu.test(name);
    if (leadsOut || name === '' || names.has(name))
      throw new BundleError('bad-name', (parts) => parts.name(shown(name)));
    names.add(name);
  }
}

async function photosIn(file: Blob, entries: readonly ZipEntry[], pace: Pace): Promise<KeptPhoto[]> {
  const pictures: Readonly<Record<PictureKind, Map<string, Blob>>> = {
    photo: new Map(),
    thumbnail: new Map(),
  };
  for (const [i, entry] of entries.entries()) {
    await pace.at(i / entries.length);
    const picture = pictureOf(entry.name);
    if (!picture) continue;
    pictures[picture.kind].set(picture.key, await pictureIn(file, entry));
  }
  const { photo: photos, thumbnail: thumbnails } = pictures;
  const alone = [...photos.keys(), ...thumbnails.keys()].find(
    (key) => !(photos.has(key) && thumbnails.has(key)),
  );
  if (alone) throw new BundleError('bad-photo', (parts) => parts.unpaired(alone));
  return [...photos]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, photo]) => ({ key, photo, thumbnail: thumbnails.get(key)! }));
}

/** Checked against its checksum, without place and camera, and left in the file where it lies there as it is. */
async function pictureIn(file: Blob, entry: ZipEntry): Promise<Blob> {
  const part = await packedPart(file, entry);
  const bytes = await unpackedPart(part, entry);
  checkPicture(entry.name, bytes.length, bytes);
  checkPixels(entry.name, bytes);
  const bare = await withoutMetadata(bytes);
  if (entry.method !== 0 || bare !== bytes) return new Blob([bare], { type: 'image/jpeg' });
  return part.slice(0, part.size, 'image/jpeg');
}
