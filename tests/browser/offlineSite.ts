import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright';
import { build, type Plugin, preview } from 'vite';

const repository = fileURLToPath(new URL('../..', import.meta.url));

export interface OfflineSite {
  readonly url: string;
  /** Builds the app anew into the folder that is served: page and code carry the title. */
  publish(title: string): Promise<void>;
  /** Ends the server, as a network does that is gone. */
  stop(): Promise<void>;
  remove(): Promise<void>;
}

/** Builds the app under a title and serves it from a folder of its own, as a site whose versions follow each other. */
export async function openOfflineSite(title: string): Promise<OfflineSite> {
  const outDir = await mkdtemp(join(tmpdir(), 'glintgrade-site-'));
  const settings = {
    configFile: join(repository, '.config/vite.config.ts'),
    logLevel: 'error',
    mode: 'production',
    build: { outDir, emptyOutDir: true },
    preview: { host: '127.0.0.1', port: 0, strictPort: true },
  } as const;
  const publish = async (name: string) => {
    const before = process.env.NODE_ENV;
    process.env.NODE_ENV = 'production';
    await build({ ...settings, plugins: [titled(name)] });
    process.env.NODE_ENV = before;
  };
  await publish(title);
  const server = await preview(settings);
  const url = server.resolvedUrls?.local[0];
  if (!url) throw new Error('The preview server has no address.');
  let isServing = true;
  const stop = async () => {
    if (isServing) await server.close();
    isServing = false;
  };
  const remove = async () => {
    await stop();
    await rm(outDir, { recursive: true });
  };
  return { url, publish, stop, remove };
}

function titled(title: string): Plugin {
  return {
    name: 'titled',
    transform: (code, id) =>
      id.endsWith('/src/main.tsx') ? `${code}\ndocument.body.dataset.version = '${title}';` : undefined,
    transformIndexHtml: (html) => html.replace(/<title>.*<\/title>/, `<title>${title}</title>`),
  };
}

/** Waits until the whole program is on the device and answers for the page. */
export async function whenCopied(page: Page): Promise<void> {
  await page.waitForFunction(
    async () => (await navigator.serviceWorker.ready) && navigator.serviceWorker.controller !== null,
  );
}

/** Names of the files in the copies that the program keeps of itself, less what depends on their content. */
export function copiedFiles(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const names = (await caches.keys()).filter((name) => name.startsWith('glintgrade /'));
    const copies = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
    return copies
      .flat()
      .map(({ url }) => url.slice(location.origin.length).replace(/-[\w-]{8}(?=\.\w+$)/, ''));
  });
}
