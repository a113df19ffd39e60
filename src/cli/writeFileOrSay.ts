import { writeFile } from 'node:fs/promises';
import { Misuse } from './misuse';

/**
 * Writes a file the person named.
 *
 * @throws Misuse that names it, if it cannot be written.
 */
export async function writeFileOrSay(path: string, text: string): Promise<void> {
  await writeFile(path, text).catch(() => {
    throw new Misuse(`Cannot write "${path}".`);
  });
}
