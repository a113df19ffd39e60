import { afterEach, expect, it } from 'vitest';
import { english } from '../../src/texts/english/english';
import { german } from '../../src/texts/german/german';
import { checkedLanguage, languageFor } from '../../src/texts/languages';
import {
  areaWords,
  benchLengthWords,
  densityWords,
  lengthWords,
  limitOfTyped,
  mmOfTyped,
  surfaceWords,
  typedLength,
  typedLimit,
} from '../../src/texts/measures';
import { openTexts } from '../../src/texts/openTexts';
import { plainNumber } from '../../src/texts/plainNumber';
import { onSpeech, speak, speech, texts } from '../../src/texts/speech';

afterEach(() => speak({ language: 'en', texts: english, length: 'mm' }));

it('speaks what the owner chose, else the first language of the browser that it knows, else English', () => {
  expect(languageFor('en', ['de'])).toBe('en');
  expect(languageFor(null, ['fr-FR', 'de-AT', 'en'])).toBe('de');
  expect(languageFor(null, ['DE'])).toBe('de');
  expect(languageFor(null, ['fr', 'toString'])).toBe('en');
  expect(checkedLanguage('constructor')).toBeNull();
  expect(checkedLanguage('de')).toBe('de');
});

it('opens the texts of each language', async () => {
  expect(await openTexts('en')).toBe(english);
  expect(await openTexts('de')).toBe(german);
});

it('writes numbers with the decimal mark of the language', () => {
  speak({ language: 'de', texts: german });
  expect(plainNumber(3.14)).toBe('3,1');
  expect(plainNumber(240)).toBe('240');
});

it('says lengths and areas in the owner’s unit', () => {
  expect([lengthWords(25.4), areaWords(2), densityWords(3)]).toEqual(['25 mm', '2 mm²', '3 per cm²']);
  speak({ length: 'inch' });
  // 1 inch is 25.4 mm exactly. Source: NIST SP 811, appendix B.8; so 1 in² = 6.4516 cm².
  expect([lengthWords(25.4), lengthWords(0.8), lengthWords(0.1)]).toEqual(['1 in', '0.031 in', '0.004 in']);
  expect([areaWords(645.16), densityWords(1)]).toEqual(['1 in²', '6.5 per in²']);
});

it('says lengths of the bench in whole centimeters or inches', () => {
  expect([benchLengthWords(150), benchLengthWords(600)]).toEqual(['15 cm', '60 cm']);
  speak({ length: 'inch' });
  expect([benchLengthWords(150), benchLengthWords(600)]).toEqual(['6 in', '24 in']);
});

it('takes back a typed length as it showed it', () => {
  expect([typedLength(16), mmOfTyped(16)]).toEqual([16, 16]);
  speak({ length: 'inch' });
  expect(typedLength(16)).toBe(0.63);
  expect(mmOfTyped(0.63)).toBeCloseTo(16, 1);
});

it('keeps as many decimals of a millimeter as a table wants, and two digits of an inch', () => {
  expect([lengthWords(34.6, 0), lengthWords(1, 1), areaWords(0.123, 1), surfaceWords(3, 1)]).toEqual([
    '35 mm',
    '1.0 mm',
    '0.1 mm²',
    '3.0 cm²',
  ]);
  speak({ length: 'inch' });
  expect([lengthWords(34.6, 0), surfaceWords(6.4516, 1)]).toEqual(['1.4 in', '1 in²']);
});

it('shows a limit back as it was typed', () => {
  expect([typedLimit(0.85, 'mm'), limitOfTyped(0.85, 'mm')]).toEqual([0.85, 0.85]);
  speak({ length: 'inch' });
  for (const unit of ['mm', 'per cm²'] as const)
    for (const typed of [0.0315, 0.5, 3.2, 12])
      expect(typedLimit(limitOfTyped(typed, unit), unit)).toBe(typed);
  expect(limitOfTyped(1, 'mm')).toBeCloseTo(25.4, 9);
  expect(limitOfTyped(6.4516, 'per cm²')).toBeCloseTo(1, 9);
});

it('tells whoever draws when the speech changes, until they stop listening', () => {
  let heard = 0;
  const stop = onSpeech(() => (heard += 1));
  const before = speech();
  speak({ texts: german, language: 'de' });
  expect(speech()).not.toBe(before);
  expect(texts().page.tray).toBe('Schale');
  stop();
  speak({ texts: english });
  expect(heard).toBe(1);
});

/** Every text of a tree by its path; functions are left to the tests of their part. */
function leaves(tree: object, path = ''): [string, unknown][] {
  return Object.entries(tree).flatMap(([name, part]): [string, unknown][] =>
    typeof part === 'object' && part !== null ? leaves(part, `${path}${name}.`) : [[`${path}${name}`, part]],
  );
}

it('has in German what it has in English, and nothing of it empty', () => {
  const paths = (tree: object) => leaves(tree).map(([path]) => path);
  expect(paths(german).sort()).toEqual(paths(english).sort());
  expect(leaves(german).filter(([, text]) => text === '')).toEqual([]);
});

it('leaves no sentence in English', () => {
  const said = new Map(leaves(english));
  const same = leaves(german).filter(
    ([path, text]) => typeof text === 'string' && text.includes(' ') && text === said.get(path),
  );
  expect(same).toEqual([]);
});
