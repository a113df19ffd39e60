import { createRequire } from 'node:module';
import { dirname, isAbsolute, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { Plugin } from 'vite';

const SUFFIX = '?url';
const PREFIX = '\0file-url:';
const require = createRequire(import.meta.url);

/** Makes `import url from './file.bin?url'` give a `file:` address when the code runs in Node. */
export function fileUrlsInNode(): Plugin {
  return {
    name: 'file-urls-in-node',
    enforce: 'pre',
    applyToEnvironment: (environment) => environment.config.consumer === 'server',
    resolveId(id, importer) {
      return id.endsWith(SUFFIX) ? PREFIX + locate(id.slice(0, -SUFFIX.length), importer) : undefined;
    },
    load(id) {
      if (!id.startsWith(PREFIX)) return undefined;
      return `export default ${JSON.stringify(pathToFileURL(id.slice(PREFIX.length)).href)};`;
    },
  };
}

function locate(path: string, importer: string | undefined): string {
  if (isAbsolute(path)) return path;
  if (!path.startsWith('.')) return require.resolve(path);
  if (!importer) throw new Error(`Cannot tell where "${path}" lies: nothing imports it.`);
  const from = importer.startsWith('file:') ? fileURLToPath(importer) : importer;
  return resolve(dirname(from), path);
}
