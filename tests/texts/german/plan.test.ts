import { afterEach, beforeEach, expect, it } from 'vitest';
import { filling } from '../../../src/recipes/filling';
import { hazardsOf } from '../../../src/recipes/hardness';
import { usualRecipe } from '../../../src/recipes/recipe';
import { atTheBench, spoonWords } from '../../../src/recipes/spoons';
import { amountWords, FIRST_UNITS, weightWords } from '../../../src/recipes/units';
import { english as allEnglish } from '../../../src/texts/english/english';
import { plan as english } from '../../../src/texts/english/plan';
import { german as allGerman } from '../../../src/texts/german/german';
import { plan as german } from '../../../src/texts/german/plan';
import { speak } from '../../../src/texts/speech';
import {
  clockWords,
  dayWords,
  fillWords,
  groupWords,
  inDaysWords,
  loadWords,
  mismatchWords,
  roomAndWater,
  spanWords,
  stockWords,
} from '../../../src/ui/plan/planWords';
import { spokenPairs } from '../../helpers/spokenPairs';

beforeEach(() => speak({ language: 'de', texts: allGerman }));
afterEach(() => speak({ language: 'en', texts: allEnglish }));

it('says everything in words of its own, with the numbers given', () => {
  const group = [14, 'medium'];
  const pairs = spokenPairs(english, german, {
    dueIn: [3],
    dueOver: [2],
    turning: ['fine', 'M1', 6],
    afterCheck: ['10'],
    inStep: group,
    staysIn: group,
    goesBack: group,
    goesTo: group,
    groupWeight: ['2', '1', '3'],
    shareOfLoad: ['60', '50', '70', 'M1', '8'],
    sayLoad: ['M1', 'rotary'],
    fillTooMuch: ['1 kg'],
    fillAdd: ['800 g', 'medium'],
    fillWaitOrAdd: ['800 g', 'medium'],
    left: ['340 g'],
    enough: [3, 'M1'],
    counted: ['10', 4, 3],
    goesOn: ['10', '2'],
    apart: ['A', 'B'],
    washOutOf: ['fine', 'polish'],
    ticked: [3, 9],
    soapLeft: [42, '14:05', '15:05'],
    soapLong: ['14:05', '15:05'],
    span: ['7', '10'],
    forFullLoad: ['3 kg'],
    forEach: ['450 g'],
    forBowl: ['8 kg'],
    tablespoons: ['2 ½', 2.5],
    teaspoons: ['2', 2],
    about: ['40'],
    amountOf: ['2', '600'],
    inTablespoons: ['600'],
    inGrams: ['600'],
  });
  expect(pairs.filter((pair) => pair.english === pair.german)).toEqual([]);
  for (const { path, german: said, numbers } of pairs) {
    // "2.5" is written "2 ½".
    const given = path === 'tablespoons' ? ['2 ½'] : numbers;
    for (const number of given) expect(said, path).toContain(number);
  }
});

it('names days, times and spans as German does', () => {
  expect([-2, -1, 0, 1, 3].map(inDaysWords)).toEqual([
    'seit 2 Tagen',
    'seit 1 Tag',
    'heute',
    'morgen',
    'in 3 Tagen',
  ]);
  // March 10, 2026 is a Tuesday.
  expect(dayWords('2026-03-10')).toBe('Di., 10. März');
  expect(clockWords(new Date(2026, 2, 10, 14, 5).getTime())).toBe('14:05');
  expect([spanWords({ from: 1, to: 1 }), spanWords({ from: 1.5, to: 2 })]).toEqual([
    '1 Tag',
    '1,5 bis 2 Tage',
  ]);
  expect([german.soapLeft(1, '14:05', '15:05'), english.soapLeft(1, '14:05', '15:05')]).toEqual([
    'Noch 1 Minute: zwischen 14:05 und 15:05 Uhr anhalten.',
    '1 minute to go: stop between 14:05 and 15:05.',
  ]);
});

it('says where stones go with the article of the step', () => {
  expect(groupWords(14, 'coarse', 'coarse', false)).toBe('14 Steine bleiben im Grobschliff');
  expect(groupWords(1, 'fine', 'prepolish', false)).toBe('1 Stein geht weiter zur Vorpolitur');
  expect(groupWords(3, 'fine', 'coarse', false)).toBe('3 Steine gehen zurück zum Grobschliff');
  expect(groupWords(1, 'polish', 'polish', true)).toBe('1 Stein ist in der Politur');
  expect(german.washOutOf('fine', 'prepolish')).toBe('Auswaschen nach Feinschliff, vor der Vorpolitur');
  expect(german.washOutOf('coarse', 'medium')).toBe('Auswaschen nach Grobschliff, vor dem Mittelschliff');
  expect(german.turning('coarse', 'Trommel 1', 0)).toBe('Grobschliff in Trommel 1, Korn heute zugegeben');
});

it('says what to add, and what is apart', () => {
  const fill = (kg: number) => filling({ count: 9, kg, kgLow: kg, kgHigh: kg }, 2)!;
  expect(fillWords(fill(0.5), 'polish', false, FIRST_UNITS)).toBe(
    'Gib etwa 1,5 kg andere Steine dazu, die auch in der Politur sind, oder Keramikfüllkörper.',
  );
  expect(fillWords(fill(0.5), 'medium', true, FIRST_UNITS)).toMatch(/^Lass sie auf weitere warten,/);
  expect(fillWords(fill(3), 'medium', true, FIRST_UNITS)).toMatch(/^Etwa 1 kg zu viel:/);
  expect(mismatchWords({ softer: 'fluorite', harder: 'agate' })).toMatch(/^Fluorit und Achat liegen mehr/);
  expect(hazardsOf(['malachite', 'agate', 'turquoise'])).toEqual([allGerman.verdicts.hazards.copper]);
});

it('says what is left of a grit', () => {
  expect([stockWords(343, FIRST_UNITS), stockWords(1200, FIRST_UNITS)]).toEqual([
    'noch 340 g',
    'noch 1,2 kg',
  ]);
  expect([0, 1, 3].map((count) => german.enough(count, 'Wanne'))).toEqual([
    'Reicht in Wanne für keine Kornzugabe mehr',
    'Reicht in Wanne noch für 1 Kornzugabe',
    'Reicht in Wanne noch für 3 Kornzugaben',
  ]);
  const counted = (charges: number, assumed: number) => german.counted('10. März', charges, assumed);
  expect([counted(0, 0), counted(1, 1), counted(4, 3), counted(2, 0)]).toEqual([
    'Gezählt am 10. März, seitdem nichts verbraucht',
    'Gezählt am 10. März, seitdem 1 Kornzugabe, nach Rezept',
    'Gezählt am 10. März, seitdem 4 Kornzugaben, davon 3 nach Rezept',
    'Gezählt am 10. März, seitdem 2 Kornzugaben',
  ]);
});

it('measures and weighs in German', () => {
  expect(spoonWords(atTheBench(2.5)!)).toBe('2 ½ Esslöffel');
  expect(spoonWords(atTheBench(0.25)!)).toBe('¾ Teelöffel');
  expect(amountWords('medium', 2, { amount: 'grams' })).toEqual({
    first: '40 g',
    second: 'etwa 2 Esslöffel',
  });
  expect(amountWords('medium', 0, { amount: 'spoons' }).first).toBe('nichts');
  expect(weightWords(2.7, { weight: 'kg' })).toBe('2,7 kg');
  const barrel = usualRecipe({ type: 'rotary', capacityKg: null }, 'coarse');
  expect(loadWords(barrel, FIRST_UNITS)).toMatch(/^Für je 454 g Steine\. Trag im Journal ein/);
  expect(roomAndWater(barrel).map(({ text }) => text.slice(0, 7))).toEqual(['Trommel', 'Wasser ']);
});
