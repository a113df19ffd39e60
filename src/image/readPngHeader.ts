import { asciiAt, bigEndianAt } from './bytes';
import type { PhotoHeader } from './photoHeader';

const SIGNATURE_BYTES = 8;
/** Length, name and checksum around the data of a chunk. */
const CHUNK_FRAME_BYTES = 12;

/**
 * Reads a PNG's size and walks its chunks to the last one.
 *
 * @see ISO/IEC 15948, clauses 5.3 and 11.2.
 */
export function readPngHeader(bytes: Uint8Array): PhotoHeader {
  const isHeader = asciiAt(bytes, SIGNATURE_BYTES + 4, 4) === 'IHDR' && bytes.length >= 24;
  const size = isHeader ? { widthPx: bigEndianAt(bytes, 16, 4), heightPx: bigEndianAt(bytes, 20, 4) } : null;
  let at = SIGNATURE_BYTES;
  while (at + CHUNK_FRAME_BYTES <= bytes.length) {
    if (asciiAt(bytes, at + 4, 4) === 'IEND') return { size, isWhole: true };
    at += CHUNK_FRAME_BYTES + bigEndianAt(bytes, at, 4);
  }
  return { size, isWhole: false };
}
