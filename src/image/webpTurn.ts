import { asciiAt, bigEndianAt, littleEndianAt } from './bytes';
import type { Photo } from './photo';
import { readChunkExif, webpExifAt } from './readChunkExif';

const ORIENTATION_TAG = 0x0112;
/** "EXIF present" in the flags of the chunk `VP8X`. */
const FLAGS_AT = 20;
const EXIF_FLAG = 8;

/**
 * How a WebP is to be turned upright by its EXIF data. Browsers disagree on whether they do so; Chromium does not.
 *
 * @param bytes - The whole file.
 * @returns 1 to 8; 1, which is upright, also for other files and for those that do not say.
 * @see RFC 9649, section 2.7 (chunks); CIPA DC-008, tag 0x0112; TIFF 6.0, section 2 (directories).
 */
export function webpOrientation(bytes: Uint8Array): number {
  const tiff = webpExifAt(bytes) === null ? null : readChunkExif(bytes);
  return tiff === null ? 1 : tiffOrientation(tiff);
}

/** A copy of a WebP without EXIF data, which every browser decodes as it is stored. */
export function webpWithoutExif(bytes: Uint8Array): Uint8Array<ArrayBuffer> {
  const copy = new Uint8Array(bytes);
  // A chunk of an unknown name is left out.
  for (let at = webpExifAt(copy); at !== null; at = webpExifAt(copy)) copy.set([0x6e, 0x6f, 0x6e, 0x65], at);
  if (asciiAt(copy, 12, 4) === 'VP8X') copy[FLAGS_AT]! &= ~EXIF_FLAG;
  return copy;
}

/**
 * Turns stored pixels upright.
 *
 * @param orientation - 1 to 8.
 */
export function turnedUpright(photo: Photo, orientation: number): Photo {
  if (orientation === 1) return photo;
  const { widthPx, heightPx, rgba } = photo;
  const isOnSide = orientation > 4;
  const [width, height] = isOnSide ? [heightPx, widthPx] : [widthPx, heightPx];
  const from = new Uint32Array(rgba.buffer, rgba.byteOffset, widthPx * heightPx);
  const to = new Uint32Array(width * height);
  const fromRight = [2, 3, 7, 8].includes(orientation);
  const fromBottom = [3, 4, 6, 7].includes(orientation);
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      const [down, right] = isOnSide ? [column, row] : [row, column];
      const storedRow = fromBottom ? heightPx - 1 - down : down;
      const storedColumn = fromRight ? widthPx - 1 - right : right;
      to[row * width + column] = from[storedRow * widthPx + storedColumn]!;
    }
  }
  return { ...photo, widthPx: width, heightPx: height, rgba: new Uint8ClampedArray(to.buffer) };
}

function tiffOrientation(tiff: Uint8Array): number {
  const order = asciiAt(tiff, 0, 4);
  const numberAt = order === 'II*\0' ? littleEndianAt : bigEndianAt;
  const directory = numberAt(tiff, 4, 4);
  const count = numberAt(tiff, directory, 2);
  for (let i = 0; i < count; i++) {
    const entry = directory + 2 + 12 * i;
    if (entry + 12 > tiff.length) return 1;
    if (numberAt(tiff, entry, 2) !== ORIENTATION_TAG) continue;
    const value = numberAt(tiff, entry + 8, 2);
    return value >= 1 && value <= 8 ? value : 1;
  }
  return 1;
}
