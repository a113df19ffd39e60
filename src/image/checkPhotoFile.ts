import { checkSize } from './checkSize';
import { Refusal } from './notice';
import { type PhotoFormat, photoFormat } from './photoFormat';
import type { PhotoHeader } from './photoHeader';
import { readHeifHeader } from './readHeifHeader';
import { readJpegHeader } from './readJpegHeader';
import { readPngHeader } from './readPngHeader';
import { readWebpHeader } from './readWebpHeader';

const READERS: Record<PhotoFormat, (bytes: Uint8Array) => PhotoHeader> = {
  avif: readHeifHeader,
  heic: readHeifHeader,
  jpeg: readJpegHeader,
  png: readPngHeader,
  webp: readWebpHeader,
};

/**
 * Refuses a file that cannot be a whole photo of a usable size, before anything is decoded.
 *
 * @param bytes - The whole file.
 * @throws Refusal `empty-file`, `not-an-image`, `truncated`, `too-small` or `too-large`.
 */
export function checkPhotoFile(bytes: Uint8Array): void {
  if (bytes.length === 0) throw new Refusal('empty-file');
  const format = photoFormat(bytes);
  if (!format) throw new Refusal('not-an-image');
  const { size, isWhole } = READERS[format](bytes);
  if (!isWhole) throw new Refusal('truncated');
  if (!size) throw new Refusal('not-an-image');
  checkSize(size.widthPx, size.heightPx);
}
