import { afterEach, expect, it } from 'vitest';
import { LIMIT_NOTES } from '../../../src/grading/limits';
import { STEPS } from '../../../src/grading/steps';
import { english } from '../../../src/texts/english/english';
import { german } from '../../../src/texts/german/german';
import { speak } from '../../../src/texts/speech';
import { daySentence, lampSentence } from '../../../src/ui/setup/rigWords';
import { spokenPairs } from '../../helpers/spokenPairs';

afterEach(() => speak({ language: 'en', texts: english, length: 'mm' }));

it('says everything of Setup in German, with the numbers given', () => {
  const pairs = spokenPairs(english.setup, german.setup, {
    ballDiameter: ['mm'],
    ballRange: ['4', '60 mm'],
    lampFrom: ['7', 36],
    rememberedOn: ['7'],
    limitsAt: ['7'],
    labelIn: ['7', 'mm'],
  });
  for (const { path, english: said, german: gesagt, numbers } of pairs) {
    expect(gesagt, path).not.toBe(said);
    for (const number of numbers) expect(gesagt, path).toContain(number);
  }
});

it('says where the lamp stands, and on which day it was remembered', () => {
  speak({ language: 'de', texts: german });
  const off = (36 * Math.PI) / 180;
  const light = { angularDiameterDeg: 8, direction: [Math.sin(off), 0, Math.cos(off)] } as const;
  expect(lampSentence(light)).toBe('Das Licht kommt im Bild von rechts, 36° neben der Kamera.');
  expect(daySentence('2026-10-03')).toBe('Gemerkt am 3. Oktober 2026.');
  expect(daySentence(null)).toBe('Gemerkt.');
});

it('names every limit, and every step in few letters', () => {
  const names = Object.keys(LIMIT_NOTES) as (keyof typeof LIMIT_NOTES)[];
  for (const { setup } of [english, german]) {
    expect(new Set(names.map((name) => setup.limits[name])).size).toBe(names.length);
    // Five of them share a phone's width.
    for (const step of STEPS) expect(setup.shortSteps[step].length).toBeLessThanOrEqual(10);
  }
});
