import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { programFiles } from '../../.config/plugins/offlineCopy';
import { temporaryFolder } from '../helpers/temporaryFolder';

const { path } = await temporaryFolder();
let count = 0;

/** A folder as a build leaves it. */
function built(page: string): string {
  const folder = join(path, `${++count}`);
  mkdirSync(join(folder, 'assets'), { recursive: true });
  writeFileSync(join(folder, 'index.html'), page);
  writeFileSync(join(folder, 'manifest.webmanifest'), '{}');
  writeFileSync(join(folder, 'serviceWorker.js'), 'of an earlier build');
  writeFileSync(join(folder, 'assets/main-Ab3_x-9z.js'), '1');
  writeFileSync(join(folder, 'assets/example-year-AAAAAAAA.zip'), '2');
  return folder;
}

it('sorts files into those named after their content, those that keep their name, and those for later', () => {
  const { lasting, changing, later } = programFiles(built('<p>'));
  expect(lasting).toEqual(['assets/main-Ab3_x-9z.js']);
  expect(changing).toEqual(['', 'manifest.webmanifest']);
  expect(later).toEqual(['assets/example-year-AAAAAAAA.zip']);
});

it('names the version after the content: the same twice, another when one byte changes', () => {
  const version = (page: string) => programFiles(built(page)).version;
  expect(version('<p>')).toBe(version('<p>'));
  expect(version('<p>')).not.toBe(version('<q>'));
});
