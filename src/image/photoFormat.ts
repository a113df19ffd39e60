import { asciiAt, bigEndianAt } from './bytes';

export type PhotoFormat = 'jpeg' | 'png' | 'webp' | 'avif' | 'heic';

/** Still pictures and sequences coded with AV1. */
const AVIF = /^avi[fs]$/;
/** Still pictures and sequences coded with HEVC, of any profile. */
const HEIC = /^he(ic|ix|im|is|vc|vx|vm|vs)$/;
const MINOR_VERSION_AT = 12;
const MOST_BRANDS = 64;

/**
 * Tells the format of a photo from its first bytes; its name does not count.
 *
 * @returns null for anything this program does not read.
 * @see ITU-T T.81 (JPEG), ISO/IEC 15948 (PNG), RFC 9649 (WebP), ISO/IEC 14496-12 (boxes and brands), AV1 Image File
 *   Format (AVIF), ISO/IEC 23008-12, annex B.4 (HEIC).
 */
export function photoFormat(bytes: Uint8Array): PhotoFormat | null {
  if (asciiAt(bytes, 0, 3) === '\xff\xd8\xff') return 'jpeg';
  if (asciiAt(bytes, 0, 8) === '\x89PNG\r\n\x1a\n') return 'png';
  if (asciiAt(bytes, 0, 4) === 'RIFF' && asciiAt(bytes, 8, 4) === 'WEBP') return 'webp';
  if (asciiAt(bytes, 4, 4) === 'ftyp') return heifFormat(bytes);
  return null;
}

/** By the major brand and the compatible ones, which together fill the first box. */
function heifFormat(bytes: Uint8Array): PhotoFormat | null {
  const end = Math.min(bigEndianAt(bytes, 0, 4), MOST_BRANDS * 4);
  const brands: string[] = [];
  for (let at = 8; at + 4 <= end; at += 4) if (at !== MINOR_VERSION_AT) brands.push(asciiAt(bytes, at, 4));
  if (brands.some((brand) => AVIF.test(brand))) return 'avif';
  return brands.some((brand) => HEIC.test(brand)) ? 'heic' : null;
}
