import fc from 'fast-check';
import { afterEach, expect, it } from 'vitest';
import { STEPS } from '../../src/grading/steps';
import { chargeOf, chargeText } from '../../src/recipes/chargeText';
import { readCharge } from '../../src/recipes/readCharge';
import { usualRecipe } from '../../src/recipes/recipe';
import { gramsOf, SUPPLIES } from '../../src/recipes/supplies';
import { english } from '../../src/texts/english/english';
import { german } from '../../src/texts/german/german';
import type { Language } from '../../src/texts/languages';
import { speak, texts } from '../../src/texts/speech';

const SPOKEN = { en: english, de: german } as const;
const inLanguage = (language: Language) => speak({ language, texts: SPOKEN[language] });
afterEach(() => inLanguage('en'));

it('reads back what it wrote, whichever language it was written in and is spoken now', () => {
  const kg = fc.double({ min: 0.2, max: 60, noNaN: true });
  const language = fc.constantFrom('en', 'de');
  const recipes = fc.record({
    capacityKg: kg,
    step: fc.constantFrom(...STEPS),
    type: fc.constantFrom('rotary', 'vibratory'),
  });
  fc.assert(
    fc.property(recipes, language, language, ({ step, ...machine }, written, spoken) => {
      const recipe = usualRecipe(machine, step);
      const charge = chargeOf(recipe);
      inLanguage(written);
      const text = chargeText(recipe);
      inLanguage(spoken);
      const read = readCharge(text, step);
      if (recipe.amounts.length === 0) expect(read).toBeNull();
      else {
        expect(Object.keys(read!)).toEqual(Object.keys(charge));
        for (const [supply, tablespoons] of Object.entries(charge)) {
          expect(read![supply as keyof typeof charge]).toBeCloseTo(tablespoons, 9);
        }
      }
    }),
  );
});

it('knows every supply by its name in every language, at whichever step it went in', () => {
  for (const language of ['en', 'de'] as const) {
    inLanguage(language);
    for (const supply of SUPPLIES) {
      const amounts = [{ supply, tablespoons: 2, saidBy: 'owner' as const }];
      for (const step of STEPS) expect(readCharge(chargeText({ amounts }), step)).toEqual({ [supply]: 2 });
    }
  }
});

it('reads the usual charges as a run is begun with them, save those per pound', () => {
  for (const language of ['en', 'de'] as const) {
    inLanguage(language);
    const { grits, charges } = texts().verdicts;
    const read = STEPS.map((step) => readCharge(`${grits[step]}: ${charges[step]}`, step));
    expect(read).toEqual([
      null,
      { medium: 2 },
      { fine: 1, borax: 1 },
      { prepolish: 1, borax: 1 },
      { polish: 1, borax: 1 },
    ]);
  }
});

it('reads what the owner writes', () => {
  expect(readCharge('1 tablespoon, with 1 tablespoon of borax', 'polish')).toEqual({ polish: 1, borax: 1 });
  expect(readCharge('2 tablespoons with 1 teaspoon of borax', 'medium')).toEqual({ medium: 2, borax: 1 / 3 });
  expect(readCharge('2 ½ tbsp 220', 'medium')).toEqual({ medium: 2.5 });
  expect(readCharge('1 1/2 tablespoons', 'medium')).toEqual({ medium: 1.5 });
  expect(readCharge('1/2 tablespoon and 3 teaspoons of borax', 'fine')).toEqual({ fine: 0.5, borax: 1 });
  expect(readCharge('2,5 tablespoons', 'medium')).toEqual({ medium: 2.5 });
  expect(gramsOf('coarse', readCharge('60/90 silicon carbide: 120 g', 'coarse')?.coarse ?? 0)).toBeCloseTo(
    120,
    9,
  );
});

it('reads what the owner writes in German', () => {
  expect(readCharge('1 EL, dazu 1 TL Borax', 'polish')).toEqual({ polish: 1, borax: 1 / 3 });
  expect(readCharge('2,5 gestrichene Esslöffel 220er', 'medium')).toEqual({ medium: 2.5 });
  expect(readCharge('1/2 Eßlöffel und 3 Teelöffel Borax', 'fine')).toEqual({ fine: 0.5, borax: 1 });
  expect(readCharge('mit 2 gehäuften Essloeffeln', 'fine')).toEqual({ fine: 2 });
  expect(readCharge('2 EL Siliziumkarbid 600 mit 1 EL Borax', 'medium')).toEqual({ fine: 2, borax: 1 });
  // An "ö" of two signs, as some keyboards write it.
  expect(readCharge('3 Esslo\u0308ffel', 'coarse')).toEqual({ coarse: 3 });
  expect(gramsOf('fine', readCharge('40 Gramm', 'fine')?.fine ?? 0)).toBeCloseTo(40, 9);
});

it('reads no amount where none is fixed', () => {
  for (const text of [
    '',
    'as always',
    '30 g/lb',
    'a spoon or two',
    '0 tablespoons',
    '1/0 tablespoon',
    '220 grit',
    '1 tablespoon per pound',
    'wie immer',
    '1 EL je Pfund',
    '30 g pro kg',
    'ein, zwei Löffel',
    '0 Esslöffel',
    '220er Korn',
  ]) {
    expect(readCharge(text, 'coarse'), text).toBeNull();
  }
});
