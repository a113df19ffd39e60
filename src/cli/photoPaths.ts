import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { Misuse } from './misuse';

const PHOTO = /\.(jpe?g|png|webp|avif|heic|heif)$/i;

/**
 * Photos named one by one, and all photo files that lie in folders named, in the order of their names.
 *
 * @throws Misuse for a name that nothing has, and a folder without photos.
 */
export async function photoPaths(names: readonly string[]): Promise<string[]> {
  return (await Promise.all(names.map(filesAt))).flat();
}

async function filesAt(name: string): Promise<string[]> {
  const found = await stat(name).catch(() => null);
  if (!found) throw new Misuse(`There is no file "${name}".`);
  if (!found.isDirectory()) return [name];
  const files = (await readdir(name)).filter((file) => PHOTO.test(file)).sort();
  if (files.length === 0) throw new Misuse(`There is no JPEG, PNG, WebP, AVIF or HEIC file in "${name}".`);
  return files.map((file) => join(name, file));
}
