import { asciiAt, bigEndianAt } from './bytes';
import type { PhotoHeader } from './photoHeader';

/** Where the size of a picture is looked for: its boxes come before the pixels. */
const HEADER_BYTES = 65_536;

/**
 * Reads the largest size an AVIF or HEIC file states and walks its outer boxes to the end of the file.
 *
 * A photo in tiles states the size of each tile and of the whole, so the largest is the photo's.
 *
 * @see ISO/IEC 14496-12, section 4.2 (boxes); ISO/IEC 23008-12, section 6.5.3 (`ispe`, the size of an image).
 */
export function readHeifHeader(bytes: Uint8Array): PhotoHeader {
  return { size: largestSize(bytes), isWhole: lastBoxEnd(bytes) <= bytes.length };
}

function largestSize(bytes: Uint8Array): PhotoHeader['size'] {
  let largest: PhotoHeader['size'] = null;
  const end = Math.min(bytes.length - 16, HEADER_BYTES);
  for (let at = 4; at < end; at++) {
    if (bytes[at] !== 0x69 || asciiAt(bytes, at, 4) !== 'ispe') continue;
    const size = { widthPx: bigEndianAt(bytes, at + 8, 4), heightPx: bigEndianAt(bytes, at + 12, 4) };
    if (!largest || size.widthPx * size.heightPx > largest.widthPx * largest.heightPx) largest = size;
  }
  return largest;
}

/** Where the outer boxes say the file ends; 0 as a box's size means that it reaches to the end. */
function lastBoxEnd(bytes: Uint8Array): number {
  let at = 0;
  while (at + 16 <= bytes.length) {
    const size = bigEndianAt(bytes, at, 4);
    const length = size === 1 ? bigEndianAt(bytes, at + 8, 8) : size;
    if (length < 8) return bytes.length;
    at += length;
  }
  return at;
}
