import { expect, it } from 'vitest';
import { filling } from '../../src/recipes/filling';
import { usualRecipe } from '../../src/recipes/recipe';
import { FIRST_UNITS } from '../../src/recipes/units';
import { texts } from '../../src/texts/speech';
import {
  dayWords,
  fillWords,
  groupWords,
  inDaysWords,
  loadWords,
  spanWords,
  stockWords,
} from '../../src/ui/plan/planWords';

const POUNDS = { ...FIRST_UNITS, weight: 'lb' } as const;

it('says when something is due', () => {
  expect([-2, -1, 0, 1, 3].map(inDaysWords)).toEqual([
    '2 days over',
    '1 day over',
    'today',
    'tomorrow',
    'in 3 days',
  ]);
  // March 10, 2026 is a Tuesday, wherever the reader is.
  expect(dayWords('2026-03-10')).toBe('Tue, Mar 10');
  expect(dayWords('soon')).toBe('soon');
  expect(spanWords({ from: 7, to: 10 })).toBe('7 to 10 days');
  expect(spanWords({ from: 1, to: 1 })).toBe('1 day');
});

it('says where stones go', () => {
  expect(groupWords(14, 'coarse', 'coarse', false)).toBe('14 stones stay in coarse');
  expect(groupWords(1, 'coarse', 'medium', false)).toBe('1 stone goes on to medium');
  expect(groupWords(3, 'fine', 'coarse', false)).toBe('3 stones go back to coarse');
  expect(groupWords(3, 'fine', 'prepolish', true)).toBe('3 stones are in pre-polish');
});

it('says what to add, and when to wait', () => {
  const fill = (kg: number) => filling({ count: 9, kg, kgLow: kg, kgHigh: kg }, 2)!;
  expect(fillWords(fill(1.2), 'medium', true, FIRST_UNITS)).toBe(
    'Add about 800 g of other stones at medium, or of ceramic media.',
  );
  expect(fillWords(fill(0.5), 'medium', true, FIRST_UNITS)).toBe(
    'Let them wait for more, or add about 1.5 kg of other stones at medium, or of ceramic media.',
  );
  expect(fillWords(fill(0.5), 'coarse', false, POUNDS)).toContain('Add about 3.3 lb');
  expect(fillWords(fill(2), 'medium', true, FIRST_UNITS)).toBe('That is a full load: add nothing.');
  expect(fillWords(fill(3), 'medium', true, FIRST_UNITS)).toBe(
    'About 1 kg too much: let some wait for the next charge.',
  );
});

it('says what is left of a grit', () => {
  expect(stockWords(343, FIRST_UNITS)).toBe('340 g left');
  expect(stockWords(1200, FIRST_UNITS)).toBe('1.2 kg left');
  expect(stockWords(340.2, POUNDS)).toBe('12 oz left');
  expect([0, 1, 3].map((charges) => texts().plan.enough(charges, 'Bowl'))).toEqual([
    'Not enough for one more charge in Bowl',
    'Enough for 1 more charge in Bowl',
    'Enough for 3 more charges in Bowl',
  ]);
  const counted = (charges: number, assumed: number) => texts().plan.counted('Mar 10', charges, assumed);
  expect([counted(0, 0), counted(1, 1), counted(4, 3), counted(2, 0)]).toEqual([
    'Counted Mar 10, nothing used since',
    'Counted Mar 10, 1 charge since, by the recipe',
    'Counted Mar 10, 4 charges since, 3 of them by the recipe',
    'Counted Mar 10, 2 charges since',
  ]);
});

it('says what amounts are for, and asks for the load where it is not known', () => {
  const recipe = usualRecipe({ type: 'vibratory', capacityKg: null }, 'fine');
  expect(loadWords(recipe, POUNDS)).toMatch(/^For a bowl of 18 lb\. Say in the journal/);
  expect(loadWords(usualRecipe({ type: 'rotary', capacityKg: null }, 'coarse'), POUNDS)).toMatch(
    /^For each 1 lb of stones\./,
  );
});
