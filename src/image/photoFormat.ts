import { asciiAt } from './bytes';

export type PhotoFormat = 'jpeg' | 'png' | 'webp' | 'avif';

/**
 * Tells the format of a photo from its first bytes; its name does not count.
 *
 * @returns null for anything this program does not read.
 * @see ITU-T T.81 (JPEG), ISO/IEC 15948 (PNG), RFC 9649 (WebP), ISO/IEC 14496-12 and AV1 Image File Format (AVIF).
 */
export function photoFormat(bytes: Uint8Array): PhotoFormat | null {
  if (asciiAt(bytes, 0, 3) === '\xff\xd8\xff') return 'jpeg';
  if (asciiAt(bytes, 0, 8) === '\x89PNG\r\n\x1a\n') return 'png';
  if (asciiAt(bytes, 0, 4) === 'RIFF' && asciiAt(bytes, 8, 4) === 'WEBP') return 'webp';
  if (asciiAt(bytes, 4, 4) === 'ftyp' && namesAvif(bytes)) return 'avif';
  return null;
}

/** Major brand or one of the first compatible brands. */
function namesAvif(bytes: Uint8Array): boolean {
  return [8, 16, 20, 24, 28, 32].some((at) => /^avi[fs]$/.test(asciiAt(bytes, at, 4)));
}
