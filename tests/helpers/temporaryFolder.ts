import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

export interface TemporaryFolder {
  readonly path: string;
  /** Writes a file and gives its path. */
  save(name: string, bytes: Uint8Array | string): Promise<string>;
}

/** A folder for one test file, removed after its tests. */
export async function temporaryFolder(): Promise<TemporaryFolder> {
  const path = await mkdtemp(join(tmpdir(), 'glintgrade-'));
  afterAll(() => rm(path, { recursive: true }));
  const save = async (name: string, bytes: Uint8Array | string) => {
    await writeFile(join(path, name), bytes);
    return join(path, name);
  };
  return { path, save };
}
