import { expect, it } from 'vitest';
import { help as english } from '../../../src/texts/english/help';
import { help } from '../../../src/texts/german/help';
import { page } from '../../../src/texts/german/page';
import { setup } from '../../../src/texts/german/setup';
import { tray } from '../../../src/texts/german/tray';
import { openHelpTexts } from '../../../src/texts/openHelpTexts';
import { numbersIn } from '../../helpers/numbersIn';

/** Stand-ins for a length, a number or a unit: as many as any text asks for, none like the other. */
const SAMPLES = ['31 mm', '47 mm', '59 mm'];

/** Every text of a tree by its path, those that are made of values with the samples in them. */
function leaves(tree: object, path = ''): [path: string, text: string][] {
  return Object.entries(tree).flatMap(([name, part]): [string, string][] => {
    if (typeof part === 'function') return [[`${path}${name}`, part(...SAMPLES)]];
    return typeof part === 'object' ? leaves(part, `${path}${name}.`) : [[`${path}${name}`, part]];
  });
}
const inGerman = leaves(help);
const inEnglish = new Map(leaves(english));

it('opens the help texts of each language', async () => {
  expect(await openHelpTexts('en')).toBe(english);
  expect(await openHelpTexts('de')).toBe(help);
});

it('has in German what it has in English, none of it empty and no sentence the same', () => {
  expect(inGerman.map(([path]) => path).sort()).toEqual([...inEnglish.keys()].sort());
  for (const [path, text] of inGerman) expect(text.trim(), path).not.toBe('');
  const same = inGerman.filter(([path, text]) => /\p{L} \p{L}/u.test(text) && text === inEnglish.get(path));
  expect(same).toEqual([]);
});

it.each(inGerman)('says the same numbers in %s', (path, text) => {
  // The German name of a button says "second" where the English one does not.
  const own = text.replace(tray.lampMoved.add, '');
  expect(numbersIn(own), text).toEqual(numbersIn(inEnglish.get(path)!));
});

it('leads to the same places and stresses as many words', () => {
  const places = (text: string) => text.match(/\]\([^)]+\)/g);
  const stressed = (text: string) => text.match(/\*+/g)?.sort();
  for (const [path, text] of inGerman) {
    expect(places(text), path).toEqual(places(inEnglish.get(path)!));
    expect(stressed(text), path).toEqual(stressed(inEnglish.get(path)!));
  }
});

it('names buttons as they are labeled', () => {
  expect(help.pattern.how).toContain(`*${tray.lampMoved.add}*`);
  expect(help.setup.remember).toContain(`*${setup.remember}*`);
  for (const text of [help.setup.ball, help.verdicts.outro, help.questions['sent-back'].answer])
    expect(text).toContain(`*${page.setup}*`);
});

it('says lengths in millimeters and in inches', () => {
  expect(help.captions.scratches(null)).toContain('einen Zehntelmillimeter breit');
  expect(help.captions.scratches('0,004 in')).toContain('0,004 in breit');
  expect(help.numbers.aboutSmoothness(true)).toContain('Quadratzoll');
  expect(help.numbers.aboutSmoothness(false)).toContain('Quadratzentimeter');
  expect(help.numbers.aboutBall(page.millimeters)).toContain('Maßstab in Millimetern');
});
