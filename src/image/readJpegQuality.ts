import { bigEndianAt } from './bytes';

const START_OF_SCAN = 0xda;
const QUANTIZATION_TABLES = 0xdb;
const COEFFICIENTS = 64;
/** Sum of the luminance table of ITU-T T.81, table K.1. */
const SUM_AT_50 = 3688;

/**
 * How strongly a JPEG was compressed, on the scale of 1 to 100 that most programs offer.
 *
 * The sum of the first quantization table is compared with that of the standard's example, which that scale calls 50:
 * tables are multiples of it, 200 − 2 q percent from 50 on and 5000 / q percent below. Cameras with tables of their
 * own get the quality whose table is as coarse on the whole.
 *
 * @param bytes - The whole file.
 * @returns 1 to 100; null when the file is no JPEG or has no such table before its pixels.
 * @see ITU-T T.81, annex B.2.4.1 (DQT) and table K.1; the scale is that of the Independent JPEG Group's library.
 */
export function readJpegQuality(bytes: Uint8Array): number | null {
  const sum = firstTableSum(bytes);
  if (sum === null || sum <= 0) return null;
  const percent = (100 * sum) / SUM_AT_50;
  return Math.min(100, Math.max(1, percent <= 100 ? (200 - percent) / 2 : 5000 / percent));
}

function firstTableSum(bytes: Uint8Array): number | null {
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) return null;
  let at = 2;
  while (at + 4 <= bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff) {
      at++;
      continue;
    }
    if (marker === START_OF_SCAN) return null;
    const length = bigEndianAt(bytes, at + 2, 2);
    if (marker === QUANTIZATION_TABLES) {
      const sum = tableSum(bytes, at + 4, Math.min(bytes.length, at + 2 + length));
      if (sum !== null) return sum;
    }
    at += 2 + length;
  }
  return null;
}

/** Sum of the table with identifier 0 among those of one segment; null when it is not there or cut short. */
function tableSum(bytes: Uint8Array, from: number, to: number): number | null {
  for (let at = from; at < to; ) {
    const size = (bytes[at] ?? 0) >> 4 === 0 ? 1 : 2;
    const end = at + 1 + size * COEFFICIENTS;
    if (end > to) return null;
    if (((bytes[at] ?? 0) & 15) === 0) {
      let sum = 0;
      for (let k = at + 1; k < end; k += size) sum += bigEndianAt(bytes, k, size);
      return sum;
    }
    at = end;
  }
  return null;
}
