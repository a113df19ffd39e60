import { asciiAt, bigEndianAt } from './bytes';

/** Where the color of a picture is looked for: its boxes come before the pixels. */
const HEADER_BYTES = 65_536;
/** Code of Display P3's primaries (SMPTE EG 432-1). */
const P3_PRIMARIES = 12;
/** Display P3's red, green and blue under D50, X and Z, as profiles of it hold them; sRGB's red has X = 0.436. */
const P3_COLORANTS = { rXYZ: [0.5151, -0.0011], gXYZ: [0.292, 0.0419], bXYZ: [0.1571, 0.7841] } as const;
/** More than rounding and adaptation change, less than the way to any other usual color space. */
const COLORANT_TOLERANCE = 0.004;

/**
 * Which primaries the values of an HEIC file are meant for; the tone curve is the same for both.
 *
 * An ICC profile counts before the primaries' code. Color spaces other than Display P3, which phones use, are taken
 * for sRGB.
 *
 * @param bytes - The whole file.
 * @see ISO/IEC 14496-12, section 12.1.5 (`colr`); ITU-T H.273, table 2 (codes); ICC.1:2022, sections 7.3 and 10.31.
 */
export function readHeifColors(bytes: Uint8Array): 'srgb' | 'display-p3' {
  let code: number | null = null;
  const end = Math.min(bytes.length - 12, HEADER_BYTES);
  for (let at = 4; at < end; at++) {
    if (bytes[at] !== 0x63 || asciiAt(bytes, at, 4) !== 'colr') continue;
    const kind = asciiAt(bytes, at + 4, 4);
    if (kind === 'prof' || kind === 'rICC')
      return isP3Profile(bytes.subarray(at + 8)) ? 'display-p3' : 'srgb';
    if (kind === 'nclx') code ??= bigEndianAt(bytes, at + 8, 2);
  }
  return code === P3_PRIMARIES ? 'display-p3' : 'srgb';
}

/** Compares the colorants that the profile's tags hold with Display P3's. */
function isP3Profile(profile: Uint8Array): boolean {
  return Object.entries(P3_COLORANTS).every(([name, [x, z]]) => {
    const at = tagAt(profile, name);
    if (at === null) return false;
    const isNear = (from: number, value: number) =>
      Math.abs(fixedPointAt(profile, from) - value) < COLORANT_TOLERANCE;
    return isNear(at + 8, x) && isNear(at + 16, z);
  });
}

/** Where a tag's data begin, after the header of 128 bytes and the number of tags. */
function tagAt(profile: Uint8Array, name: string): number | null {
  const count = Math.min(bigEndianAt(profile, 128, 4), 100);
  for (let i = 0; i < count; i++) {
    const entry = 132 + 12 * i;
    if (asciiAt(profile, entry, 4) === name) return bigEndianAt(profile, entry + 4, 4);
  }
  return null;
}

/** Signed number with 16 bits behind the point. */
function fixedPointAt(bytes: Uint8Array, at: number): number {
  const unsigned = bigEndianAt(bytes, at, 4);
  return (unsigned >= 2 ** 31 ? unsigned - 2 ** 32 : unsigned) / 65_536;
}
