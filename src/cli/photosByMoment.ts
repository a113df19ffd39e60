import { readFile, stat } from 'node:fs/promises';
import { basename } from 'node:path';
import { readMomentTaken } from '../image/readMomentTaken';
import { photoPaths } from './photoPaths';

/** A photo file and when it was taken. */
export interface DatedPhoto {
  readonly path: string;
  /** YYYY-MM-DDThh:mm:ss, as the file's EXIF data say, or else of the file's last change in this computer's zone. */
  readonly moment: string;
}

/**
 * Photos named one by one, and all photo files that lie in folders named, the oldest first; of the same second by name.
 *
 * @throws Misuse for a name that nothing has, and a folder without photos.
 */
export async function photosByMoment(names: readonly string[]): Promise<DatedPhoto[]> {
  const photos: DatedPhoto[] = [];
  for (const path of await photoPaths(names)) photos.push({ path, moment: await momentOf(path) });
  const key = ({ path, moment }: DatedPhoto) => `${moment} ${basename(path)}`;
  return photos.sort((a, b) => (key(a) < key(b) ? -1 : 1));
}

/** When a photo was taken, as `DatedPhoto.moment`. */
export async function momentOf(path: string): Promise<string> {
  const taken = await readMomentTaken(await readFile(path));
  if (taken !== null) return taken;
  const { mtime } = await stat(path);
  return new Date(mtime.getTime() - mtime.getTimezoneOffset() * 60_000).toISOString().slice(0, 19);
}
