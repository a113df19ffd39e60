/** What a bundle's `journal.json` calls itself. */
export const BUNDLE_FORMAT = 'glintgrade journal';
export const JOURNAL_FILE = 'journal.json';
export const SCHEMA_FILE = 'journal.schema.json';

/** Where a bundle keeps pictures, by the photo's key. */
const FOLDERS = { photo: 'photos', thumbnail: 'thumbnails' } as const;

export type PictureKind = keyof typeof FOLDERS;

/** Name of a picture in a bundle. */
export const pictureName = (kind: PictureKind, key: string) => `${FOLDERS[kind]}/${key}.jpg`;

/** What a name in a bundle is the name of; null for anything but a picture. */
export function pictureOf(name: string): { readonly kind: PictureKind; readonly key: string } | null {
  const match = /^(?<folder>photos|thumbnails)\/(?<key>[0-9a-f]{64})\.jpg$/.exec(name);
  const { folder, key } = match?.groups ?? {};
  return key === undefined ? null : { kind: folder === FOLDERS.photo ? 'photo' : 'thumbnail', key };
}

const MIB = 2 ** 20;

/** Most that a bundle may hold; a file that claims more is refused before anything of it is unpacked. */
export const BUNDLE_LIMITS = {
  /** Of the zip without its 64-bit extension, PKWARE APPNOTE 6.3, 4.4: bytes and entries. */
  fileBytes: 2 ** 32 - 2,
  entries: 2 ** 16 - 2,
  /** Of all entries unpacked. */
  totalBytes: 2 ** 32 - 2,
  /** About 4,000 checks of a dozen stones. */
  journalBytes: 256 * MIB,
  pictureBytes: 16 * MIB,
  /** Pictures are packed already: all of them unpacked are at most so many times as large as the file. */
  timesUnpacked: 8,
  /** Pixels of a kept photo, as of any photo (`image/checkSize.ts`), and of its thumbnail, of which lists show many. */
  pixels: { photo: 50e6, thumbnail: 2e6 },
  /** Objects and lists in each other; records have eight. */
  jsonDepth: 32,
  /** Memory for the values of a journal of `journalBytes`, which is mostly outlines, and a quarter more; `checkShape` reckons it. */
  heldBytes: 1280 * MIB,
} as const;
