import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cp, mkdir, mkdtemp, readdir, readFile, rm, symlink } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const repository = fileURLToPath(new URL('../..', import.meta.url));
/** All that a build reads, beside the packages. */
const SOURCES = ['src', 'models', 'sample-images', '.config', 'package.json', 'tsconfig.json'];

const run = promisify(execFile);

/**
 * Builds the page from a copy of the sources in another folder.
 *
 * @param under - Folders between the copy and the temporary one, so that paths differ in length too.
 * @param environment - Variables in which the builds may differ, such as time zone and language.
 * @returns SHA-256 of every built file by its path, sorted by path.
 */
export async function buildElsewhere(
  under: string,
  environment: Readonly<Record<string, string>> = {},
): Promise<Map<string, string>> {
  const temporary = await mkdtemp(join(tmpdir(), 'glintgrade-build-'));
  try {
    const folder = join(temporary, under);
    await mkdir(folder, { recursive: true });
    for (const name of SOURCES) await cp(join(repository, name), join(folder, name), { recursive: true });
    await symlink(join(repository, 'node_modules'), join(folder, 'node_modules'), 'dir');
    const { NODE_ENV: _, VITEST: __, ...inherited } = process.env;
    const words = [
      'node_modules/vite/bin/vite.js',
      'build',
      '--config',
      '.config/vite.config.ts',
      '--logLevel',
      'error',
    ];
    await run(process.execPath, words, { cwd: folder, env: { ...inherited, ...environment } });
    return await hashesIn(join(folder, 'dist'));
  } finally {
    await rm(temporary, { recursive: true });
  }
}

async function hashesIn(folder: string): Promise<Map<string, string>> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name));
  const hashes = new Map<string, string>();
  for (const file of files.sort()) {
    const name = file
      .slice(folder.length + 1)
      .split(sep)
      .join('/');
    hashes.set(
      name,
      createHash('sha256')
        .update(await readFile(file))
        .digest('hex'),
    );
  }
  return hashes;
}

/** Two builds as unlike as one machine makes them: folder, time zone, language. */
export async function buildTwice(): Promise<readonly [Map<string, string>, Map<string, string>]> {
  return [
    await buildElsewhere('a', { TZ: 'Pacific/Kiritimati', LANG: 'C', LC_ALL: 'C' }),
    await buildElsewhere('another/folder', {
      TZ: 'America/St_Johns',
      LANG: 'de_DE.UTF-8',
      LC_ALL: 'de_DE.UTF-8',
    }),
  ];
}
