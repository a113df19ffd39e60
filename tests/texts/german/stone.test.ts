import { afterEach, expect, it } from 'vitest';
import { glossOf } from '../../../src/grading/gloss';
import { shineRange } from '../../../src/grading/shineRange';
import { english } from '../../../src/texts/english/english';
import { german } from '../../../src/texts/german/german';
import { speak } from '../../../src/texts/speech';
import { stoneTitle } from '../../../src/ui/parts/stoneTitle';
import { flawWords } from '../../../src/ui/stone/flawWords';
import { glossNumber } from '../../../src/ui/stone/glossNumber';
import { shineRows } from '../../../src/ui/stone/shineRows';
import { furtherWords, skinWords } from '../../../src/ui/stone/skinWords';
import { highlightOf } from '../../helpers/measuredStone';
import { spokenPairs } from '../../helpers/spokenPairs';

const speakGerman = () => speak({ language: 'de', texts: german });
afterEach(() => speak({ language: 'en', texts: english, length: 'mm' }));

const place = { row: 3, column: 4, confidence: 0.9 };
const waves = { slopeDeg: 0.71, slopeLowDeg: 0.4, slopeHighDeg: 1.26, wavelengthMm: 0.54, longestMm: 1.3 };
const patch = { row: 3, column: 4, areaMm2: 0.12, share: 0 };

it('says everything of a stone in German, with the numbers given', () => {
  const { flaw: _, ...inGerman } = german.stone;
  const { flaw: __, ...inEnglish } = english.stone;
  const pairs = spokenPairs(inEnglish, inGerman, {
    enlarged: ['Stone 7'],
    ofBatch: [7],
    photoAlone: ['7'],
    showUncertain: [7],
    smoothnessOf: ['87'],
    inspected: ['3.2 cm²'],
    pitClasses: [['A-3', 'B-2']],
    glossAtMost: ['4.2'],
    finishAndLevel: ['7', 'G4'],
    glossReading: ['24', '20', '29', '25', '96'],
    glossOfCeiling: ['24', '96'],
    noWaves: ['1.3 mm'],
    waves: ['0.7', '0.4', '1.3', '0.5 mm'],
    dullPatches: [3, '0.4 mm²'],
    furtherReading: ['34', '20', '45'],
    further: [['34', '12'], true],
    clarity: [['81', '42', '7']],
    range: ['12', '60'],
  });
  for (const { path, english: said, german: gesagt, numbers } of pairs) {
    expect(gesagt, path).not.toBe(said);
    for (const number of numbers) expect(gesagt, path).toContain(number);
  }
});

it('has singular and plural', () => {
  const { ofBatch, showUncertain, dullPatches } = german.stone;
  expect([ofBatch(1), ofBatch(2)]).toEqual([
    'in seiner Partie, erste Kontrolle.',
    'in seiner Partie, 2 Kontrollen.',
  ]);
  expect([showUncertain(1), showUncertain(2)].map((text) => text.split(',')[0])).toEqual([
    '1 weiterer',
    '2 weitere',
  ]);
  expect([dullPatches(1, '1 mm²'), dullPatches(2, '1 mm²')].map((text) => text.slice(0, 10))).toEqual([
    'Eine stump',
    '2 stumpfe ',
  ]);
});

it('says flaws with a decimal comma, or in inches', () => {
  speakGerman();
  const pit = { kind: 'pit', diameterMm: 0.94, ...place } as const;
  expect(flawWords({ ...pit, followsLamp: false }, true)).toBe(
    'Grübchen, 0,9 mm Durchmesser, wandert nicht mit dem Licht: wohl Zeichnung, unsicher',
  );
  expect(flawWords({ kind: 'scratch', lengthMm: 4.2, widthMm: 0.07, ...place })).toBe(
    'Kratzer, 4,2 mm lang, etwa 0,07 mm breit',
  );
  speak({ length: 'inch' });
  // 0.94 mm over 25.4 mm is 0.037.
  expect(flawWords(pit)).toBe('Grübchen, 0,037 in Durchmesser');
});

it('says waves, dull patches and further readings with a decimal comma', () => {
  speakGerman();
  expect(skinWords({ waviness: waves, dullPatches: [patch] })).toEqual([
    'Welligkeit, unabhängig vom Glanz: Neigungen von 0,7° (0,4 bis 1,3) in Wellen von etwa 0,5 mm Länge, wie bei Orangenhaut.',
    'Eine stumpfe Stelle von 0,1 mm² in der gespiegelten Lampe: ein Grübchen, eine Mattstelle oder ein ausgeschliffenes Korn.',
  ]);
  const further = { row: 3, column: 4, gu60: 9.24, gu60Low: 8, gu60High: 45.1, differs: false };
  expect(furtherWords([further])).toContain('9,2 Glanzeinheiten (8,0 bis 45)');
  expect([glossNumber(9.24), glossNumber(92.4)]).toEqual(['9,2', '92']);
});

it('says all figures of a shine in German', () => {
  const rows = () => shineRows(shineRange(glossOf(highlightOf(0.01, 0.3).byIndex, 'quartz'), 0.2));
  const inEnglish = rows();
  speakGerman();
  const inGerman = rows();
  expect(inGerman.filter(({ range }) => range?.includes(' bis ')).length).toBeGreaterThan(4);
  inGerman.forEach(({ name, value, range, words }, index) => {
    const before = inEnglish[index]!;
    expect(name).not.toBe(before.name);
    expect(words).not.toBe(before.words);
    expect(value).toBe(before.value!.replace('.', ','));
    expect(range).toBe(before.range?.replace('to', 'bis').replaceAll('.', ',') ?? null);
  });
});

it('calls a stone by its number in German and by the owner’s words as they are', () => {
  speakGerman();
  expect([stoneTitle('3'), stoneTitle('der grüne')]).toEqual(['Stein 3', 'der grüne']);
});
