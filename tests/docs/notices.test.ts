import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { german } from '../../src/texts/german/german';
import { CODES, SENTENCES, saidOf } from './noticeCodes';
import { withNotices } from './noticesSection';
import { PROVOKED_BY } from './provokedBy';
import { WHEN_SAID } from './whenSaid';

const read = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
const inGerman: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  refusals: german.notices.refusals,
  warnings: german.notices.warnings,
  bundle: german.bundle.refusals,
  journal: german.journal.troubles,
  camera: german.camera.troubles,
};

it('is written in DEVELOPERS.md as it is in the code', () => {
  // After a change of codes or sentences: npm run docs:notices
  const text = read('DEVELOPERS.md');
  expect(text).toBe(withNotices(text));
  for (const [kind, code] of CODES)
    expect(text).toContain(`| \`${code}\` | ${saidOf(WHEN_SAID, kind, code)} |`);
});

it('finds a section that is stale, and one that is missing', () => {
  const text = read('DEVELOPERS.md');
  const stale = text.replace(SENTENCES.refusals['empty-file'], 'The file is empty.');
  expect(stale).not.toBe(text);
  expect(withNotices(stale)).toBe(text);
  expect(() => withNotices(text.replace('<!-- /notices -->', ''))).toThrow('DEVELOPERS.md lacks the lines');
});

it('says every code in both languages, each in words of its own', () => {
  for (const [kind, code] of CODES) {
    const [english, other] = [saidOf(SENTENCES, kind, code), inGerman[kind]![code]!];
    for (const sentence of [english, other]) expect(sentence).toMatch(/^\p{Lu}.{15,}\.$/u);
    expect(other).not.toBe(english);
  }
});

it.each(CODES)('%s %s: a test provokes it', (kind, code) => {
  const { file, title } = saidOf(PROVOKED_BY, kind, code);
  const text = read(file);
  const said = [`'${title}'`, `(\`${title}\``].filter((words) => text.includes(words));
  expect({ file, title, found: said.length }).toEqual({ file, title, found: 1 });
  // Its test names the code: as a text, as the key of a table, or as what the title begins with.
  const named = new RegExp(`'${code}'|^\\s*'?${code}'?:|'${code}: `, 'm');
  expect(text).toMatch(named);
});
