import { afterEach, beforeEach, expect, it } from 'vitest';
import { batchPoster } from '../../../src/picture/batchPoster';
import { beforeAfterCard } from '../../../src/picture/beforeAfterCard';
import { english as allEnglish } from '../../../src/texts/english/english';
import { keepsake as english } from '../../../src/texts/english/keepsake';
import { german } from '../../../src/texts/german/german';
import { keepsake } from '../../../src/texts/german/keepsake';
import { speak } from '../../../src/texts/speech';
import { inventedCard, inventedPoster } from '../../picture/inventedKeepsake';

beforeEach(() => speak({ language: 'de', texts: german }));
afterEach(() => speak({ language: 'en', texts: allEnglish, length: 'mm' }));

it('writes the card in German', () => {
  const { svg } = beforeAfterCard({ ...inventedCard, after: { ...inventedCard.after, gloss: null } });
  for (const words of [
    ...['9. März 2026', '20. November 2026', 'nach Grobschliff, 32 mm lang', 'nach Politur, 32 mm lang'],
    ...['Grobschliff → Politur', '11 Wochen im Grobschliff', '14 Kontrollen', '>10 mm<'],
    ...['damals 3 (2,7 bis 3,3)', 'jetzt: keine Zahl', 'Glanz, geschätzt', 'Höchstglanz 96'],
  ])
    expect(svg).toContain(words);
});

it('writes the poster in German, its verdicts as within a sentence', () => {
  const { svg } = batchPoster(inventedPoster(12));
  for (const words of [
    ...['2. März 2026 bis 20. November 2026', '9 Kontrollen', '6 fertig', '6 weiter'],
    '12 Steine, davon 3 Lieblingssteine',
  ])
    expect(svg).toContain(words);
});

it('draws a bar of half an inch for who measures in inches', () => {
  const barPx = (svg: string) => Number(/data-bar="" d="M[\d.]+ 796v16m0-8h([\d.]+)m/.exec(svg)![1]);
  const tenMm = barPx(beforeAfterCard(inventedCard).svg);
  speak({ length: 'inch' });
  const { svg } = beforeAfterCard(inventedCard);
  expect(svg).toContain('>0,5 in<');
  // 31.6 mm are 1.244 in.
  expect(svg).toContain('nach Grobschliff, 1,2 in lang');
  expect(barPx(svg) / tenMm).toBeCloseTo(1.27, 2);
});

it('has its singulars and plurals', () => {
  expect([keepsake.checks(1), keepsake.checks(2)]).toEqual(['1 Kontrolle', '2 Kontrollen']);
  expect([keepsake.stones(1, 0), keepsake.stones(2, 1)]).toEqual([
    '1 Stein',
    '2 Steine, davon 1 Lieblingsstein',
  ]);
  expect(keepsake.weeksInCoarse(1)).toBe('1 Woche im Grobschliff');
});

it('says each thing otherwise than in English, with the same numbers', () => {
  const samples = (words: typeof keepsake | typeof english) => [
    words.days('1', '2'),
    words.checks(7),
    words.stones(7, 3),
    words.moment('polish', '31 mm'),
    words.weeksInCoarse(7),
    words.ceiling('96'),
    words.thenReading('3', '2', '4'),
    words.nowReading('88', '79', '97'),
  ];
  const digits = (texts: string[]) => texts.map((text) => text.match(/\d+/g));
  const [inGerman, inEnglish] = [samples(keepsake), samples(english)];
  expect(digits(inGerman)).toEqual(digits(inEnglish));
  inGerman.forEach((text, i) => {
    expect(text).not.toBe(inEnglish[i]);
  });
  expect(keepsake.counted(7, 'fertig')).toBe('7 fertig');
});
