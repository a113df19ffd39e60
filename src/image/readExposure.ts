import { exifTags } from './exifTags';

/** ExposureTime (s), FNumber, PhotographicSensitivity (ISO). */
const TAGS = { seconds: 0x829a, fNumber: 0x829d, iso: 0x8827 };

/**
 * Light that a photo file says was let in: seconds · ISO / f-number².
 *
 * @param bytes - The whole file.
 * @returns A number that compares shots of one camera; null when the file does not say all three.
 * @see CIPA DC-008 (Exif), tags 0x829A, 0x829D and 0x8827.
 */
export async function readExposure(bytes: Uint8Array): Promise<number | null> {
  const found = await exifTags(bytes, Object.values(TAGS));
  const [seconds, fNumber, iso] = Object.values(TAGS).map((tag) => {
    const value = found[tag];
    return typeof value === 'number' && value > 0 && Number.isFinite(value) ? value : null;
  });
  return seconds && fNumber && iso ? (seconds * iso) / fNumber ** 2 : null;
}
