import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, preview } from 'vite';

const repository = fileURLToPath(new URL('../..', import.meta.url));

export interface Served {
  readonly url: string;
  close(): Promise<void>;
}

/**
 * Builds a page as it is published and serves it, content security policy included, on a free port.
 *
 * @param root - Folder of its `index.html`, from the top of the repository.
 */
export async function serveBuilt(root: string): Promise<Served> {
  const outDir = await mkdtemp(join(tmpdir(), 'glintgrade-built-'));
  const settings = {
    configFile: join(repository, '.config/vite.config.ts'),
    root: join(repository, root),
    logLevel: 'error',
    build: { outDir, emptyOutDir: true },
    preview: { host: '127.0.0.1', port: 0, strictPort: true },
  } as const;
  // Tests and benches run under other names, with which React would be built for debugging.
  const before = process.env.NODE_ENV;
  process.env.NODE_ENV = 'production';
  await build(settings);
  process.env.NODE_ENV = before;
  const server = await preview(settings);
  const url = server.resolvedUrls?.local[0];
  if (!url) throw new Error('The preview server has no address.');
  return {
    url,
    async close() {
      await server.close();
      await rm(outDir, { recursive: true });
    },
  };
}
