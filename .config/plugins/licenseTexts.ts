import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';

const FILE = 'licenses.txt';
const PACKAGE = /^(?<folder>.*\/node_modules\/(?:@[^/]+\/)?[^/]+)\//;
const HEAD =
  'Glintgrade is under the MIT license. These packages are part of its page, each under the license named beside it.\n';

/**
 * Puts `licenses.txt` beside the page: every package that any part of it holds, with its license. The same plugin
 * belongs among the page's plugins and its workers', since the page's build does not see what workers hold.
 */
export function licenseTexts(): Plugin {
  const folders = new Set<string>();
  return {
    name: 'license-texts',
    apply: 'build',
    generateBundle(_options, bundle) {
      for (const part of Object.values(bundle)) {
        const ids = part.type === 'chunk' ? part.moduleIds : [];
        for (const id of ids) {
          const { folder } = PACKAGE.exec(id.replaceAll('\\', '/').replace(/^\0/, ''))?.groups ?? {};
          if (folder) folders.add(folder);
        }
      }
      if (this.environment.config.isWorker) return;
      const texts = [...folders].map(licenseOf).sort();
      this.emitFile({ type: 'asset', fileName: FILE, source: [HEAD, ...texts].join('\n') });
    },
  };
}

/** Name, version and license of a package, and the text of its license where it brings one. */
function licenseOf(folder: string): string {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((one) => /^licen[cs]e(\.|$)/i.test(one));
  const text = file ? readFileSync(join(folder, file), 'utf8').trim() : 'The package brings no text of it.';
  return `${'='.repeat(80)}\n${name} ${version}: ${license}\n\n${text}\n`;
}
