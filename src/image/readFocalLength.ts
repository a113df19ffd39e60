import { exifTags } from './exifTags';

/** FocalLengthIn35mmFilm. */
const TAG = 0xa405;
/** Equivalent focal lengths outside this range are slips of the writing program, mm. */
const RANGE = { leastMm: 8, mostMm: 2000 };

/**
 * Focal length that a photo file states for a 36 × 24 mm frame.
 *
 * @param bytes - The whole file.
 * @returns Millimeters; null when the file states none that can be true.
 * @see CIPA DC-008 (Exif), tag 0xA405, FocalLengthIn35mmFilm.
 */
export async function readFocalLength(bytes: Uint8Array): Promise<number | null> {
  const found = await exifTags(bytes, [TAG]);
  const value = found[TAG];
  return typeof value === 'number' && value >= RANGE.leastMm && value <= RANGE.mostMm ? value : null;
}
