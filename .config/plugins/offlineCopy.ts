import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { build, type HtmlTagDescriptor, type Plugin } from 'vite';
import type { ProgramFiles } from '../../src/offline/programFiles.ts';
import { PAGE_HEADERS } from './contentSecurity.ts';

const WORKER = 'serviceWorker.js';
/** Files under a name of their content. */
const LASTING = /^assets\/.+-[\w-]{8}\.\w+$/;
/** Large and seldom needed: the example year. */
const LATER = /^assets\/example-year-/;

/** Makes the page installable and writes the service worker beside it, with the list of all its files. */
export function offlineCopy(): Plugin {
  let source = '';
  return {
    name: 'offline-copy',
    configResolved(config) {
      source = join(config.root, 'offline/serviceWorker.ts');
    },
    transformIndexHtml: { order: 'post', handler: () => (existsSync(source) ? installTags(source) : []) },
    writeBundle: {
      order: 'post',
      sequential: true,
      async handler({ dir }) {
        if (!dir || !existsSync(source)) return;
        writeFileSync(join(dir, WORKER), await workerCode(source, programFiles(dir)));
      },
    },
  };
}

/** Manifest, icon for devices that do not read it, and the colors of the bars around the page, light and dark. */
function installTags(source: string): HtmlTagDescriptor[] {
  const theme = readFileSync(join(source, '../../styles/theme.css'), 'utf8');
  const [light, dark] = [...theme.matchAll(/--ground: (#[0-9a-f]{6});/g)].map((match) => match[1]);
  const tag = (name: string, attrs: Record<string, string | undefined>) =>
    ({ tag: name, injectTo: 'head', attrs }) as const;
  return [
    tag('link', { rel: 'manifest', href: './manifest.webmanifest' }),
    tag('link', { rel: 'apple-touch-icon', href: './icons/full-180.png' }),
    tag('meta', { name: 'theme-color', content: light, media: '(prefers-color-scheme: light)' }),
    tag('meta', { name: 'theme-color', content: dark, media: '(prefers-color-scheme: dark)' }),
  ];
}

/** Lists a built page's files and names its version after what is in them. */
export function programFiles(folder: string): ProgramFiles {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => statSync(join(folder, name)).isFile())
    .map((name) => name.split(sep).join('/'))
    .filter((name) => name !== WORKER)
    .sort();
  const hash = createHash('sha256');
  for (const name of names) hash.update(`${name}\0`).update(readFileSync(join(folder, name)));
  const lasting = names.filter((name) => LASTING.test(name));
  return {
    version: hash.digest('hex').slice(0, 12),
    lasting: lasting.filter((name) => !LATER.test(name)),
    changing: names.filter((name) => !LASTING.test(name)).map((name) => (name === 'index.html' ? '' : name)),
    later: lasting.filter((name) => LATER.test(name)),
    headers: PAGE_HEADERS,
  };
}

/** One classic script: module service workers are not known everywhere. */
async function workerCode(entry: string, files: ProgramFiles): Promise<string> {
  const built = await build({
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    define: { PROGRAM_FILES: JSON.stringify(files) },
    build: { write: false, target: 'es2022', lib: { entry, formats: ['iife'], name: 'serviceWorker' } },
  });
  const [first] = Array.isArray(built) ? built : [built];
  const code = first && 'output' in first ? first.output[0].code : undefined;
  if (!code) throw new Error('The service worker was not built.');
  return code;
}
