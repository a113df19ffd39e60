import { exifTags } from './exifTags';

/** DateTimeOriginal. */
const TAG = 0x9003;

/**
 * When a photo file says it was taken, by the camera's own clock.
 *
 * @param bytes - The whole file; JPEG, HEIC and AVIF files are looked into.
 * @returns YYYY-MM-DDThh:mm:ss without a zone, a moment that exists; null when the file states none.
 * @see CIPA DC-008 (Exif), tag 0x9003, DateTimeOriginal.
 */
export async function readMomentTaken(bytes: Uint8Array): Promise<string | null> {
  const found = await exifTags(bytes, [TAG]);
  const stated = found[TAG];
  const match = /^(\d{4}):(\d\d):(\d\d) (\d\d):(\d\d):(\d\d)/.exec(typeof stated === 'string' ? stated : '');
  if (!match) return null;
  const [, year, month, day, hour, minute, second] = match;
  const moment = `${year}-${month}-${day}T${hour}:${minute}:${second}`;
  const read = new Date(`${moment}Z`);
  return !Number.isNaN(read.getTime()) && read.toISOString().startsWith(moment) ? moment : null;
}
