import exifr from 'exifr/dist/mini.esm.mjs';

/** DateTimeOriginal. */
const TAG = 0x9003;

/**
 * When a photo file says it was taken, by the camera's own clock.
 *
 * @param bytes - The whole file; only JPEG files are looked into.
 * @returns YYYY-MM-DDThh:mm:ss without a zone, a moment that exists; null when the file states none.
 * @see CIPA DC-008 (Exif), tag 0x9003, DateTimeOriginal.
 */
export async function readMomentTaken(bytes: Uint8Array): Promise<string | null> {
  const tags: unknown = await exifr
    .parse(bytes, { exif: { pick: [TAG] }, translateKeys: false, reviveValues: false })
    .catch(() => null);
  const stated = (tags as Record<number, unknown> | null | undefined)?.[TAG];
  const match = /^(\d{4}):(\d\d):(\d\d) (\d\d):(\d\d):(\d\d)/.exec(typeof stated === 'string' ? stated : '');
  if (!match) return null;
  const [, year, month, day, hour, minute, second] = match;
  const moment = `${year}-${month}-${day}T${hour}:${minute}:${second}`;
  const read = new Date(`${moment}Z`);
  return !Number.isNaN(read.getTime()) && read.toISOString().startsWith(moment) ? moment : null;
}
