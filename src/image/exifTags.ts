import exifr from 'exifr/dist/mini.esm.mjs';
import { photoFormat } from './photoFormat';
import { readChunkExif } from './readChunkExif';
import { readHeifExif } from './readHeifExif';

/** Longest Exif data that fit into one segment of a JPEG. */
const MOST_BYTES = 65_000;

/**
 * Exif entries of a photo file of any format.
 *
 * @param bytes - The whole file.
 * @param tags - Numbers of the entries.
 * @returns Values as stored, dates as text, by the entries' numbers; empty where the file has none.
 * @see CIPA DC-008 (Exif).
 */
export async function exifTags(
  bytes: Uint8Array,
  tags: readonly number[],
): Promise<Readonly<Record<number, unknown>>> {
  const jpeg = asJpeg(bytes);
  if (jpeg === null) return {};
  const options = { exif: { pick: [...tags] }, translateKeys: false, translateValues: false };
  const found: unknown = await exifr.parse(jpeg, { ...options, reviveValues: false }).catch(() => null);
  return (found as Record<number, unknown> | null | undefined) ?? {};
}

/** The reader knows JPEG files only, so other files' data are handed to it as the first segment of one. */
function asJpeg(bytes: Uint8Array): Uint8Array | null {
  const format = photoFormat(bytes);
  if (format === 'jpeg' || format === null) return bytes;
  const tiff = format === 'heic' || format === 'avif' ? readHeifExif(bytes) : readChunkExif(bytes);
  if (tiff === null || tiff.length > MOST_BYTES) return null;
  const length = tiff.length + 8;
  const head = [0xff, 0xd8, 0xff, 0xe1, length >> 8, length & 255, 0x45, 0x78, 0x69, 0x66, 0, 0];
  return Uint8Array.from([...head, ...tiff, 0xff, 0xd9]);
}
