import fc from 'fast-check';
import { expect, it } from 'vitest';
import { STEPS } from '../../src/grading/steps';
import type { MachineRecord } from '../../src/journal/records';
import { recipeFor, sayOwn, withOwn } from '../../src/recipes/ownRecipes';
import { USUAL_BOWL_KG, usualRecipe } from '../../src/recipes/recipe';
import { KG_PER_LB } from '../../src/recipes/spoons';
import { gramsOf, onTheScale, SUPPLIES, type Supply, tablespoonsOf } from '../../src/recipes/supplies';

const bowl = (lb: number) => ({ type: 'vibratory' as const, capacityKg: lb * KG_PER_LB });
const barrel = (lb: number) => ({ type: 'rotary' as const, capacityKg: lb * KG_PER_LB });
const amountsOf = (machine: Pick<MachineRecord, 'type' | 'capacityKg'>, step: (typeof STEPS)[number]) =>
  usualRecipe(machine, step).amounts.map(({ supply, tablespoons }) => [
    supply,
    Number(tablespoons.toFixed(6)),
  ]);

it('charges a barrel with a tablespoon per pound', () => {
  // Common practice: about 1 level tablespoon per pound; six are a usual charge for a large barrel.
  expect(amountsOf(barrel(6), 'coarse')).toEqual([['coarse', 6]]);
  const { days, filledTo } = usualRecipe(barrel(6), 'coarse');
  expect(days).toEqual({ from: 7, to: 10, saidBy: 'common-practice' });
  expect(filledTo).toEqual([2 / 3, 3 / 4]);
});

it('charges a bowl of 18 lb with 2 tablespoons of 220, then 1 each with borax', () => {
  // Common practice.
  expect(amountsOf(bowl(18), 'medium')).toEqual([['medium', 2]]);
  for (const step of ['fine', 'prepolish', 'polish'] as const) {
    expect(amountsOf(bowl(18), step)).toEqual([
      [step, 1],
      ['borax', 1],
    ]);
  }
  const days = STEPS.slice(1).map((step) => usualRecipe(bowl(18), step).days?.to ?? 0);
  expect(days.reduce((sum, one) => sum + one)).toBe(8);
});

it('says who says so', () => {
  expect(usualRecipe(barrel(3), 'coarse').amounts[0]?.saidBy).toBe('common-practice');
  expect(usualRecipe(barrel(3), 'fine').amounts[0]?.saidBy).toBe('ours');
  expect(usualRecipe(bowl(18), 'fine').amounts.every(({ saidBy }) => saidBy === 'common-practice')).toBe(
    true,
  );
});

it('gives twice the machine twice the grit', () => {
  const kg = fc.double({ min: 0.1, max: 100, noNaN: true });
  fc.assert(
    fc.property(kg, fc.constantFrom(...STEPS), fc.constantFrom('rotary', 'vibratory'), (load, step, type) => {
      const once = usualRecipe({ type, capacityKg: load }, step).amounts;
      const twice = usualRecipe({ type, capacityKg: 2 * load }, step).amounts;
      expect(twice.map(({ supply }) => supply)).toEqual(once.map(({ supply }) => supply));
      once.forEach(({ tablespoons }, i) => {
        expect(twice[i]!.tablespoons / tablespoons).toBeCloseTo(2, 9);
      });
    }),
  );
});

it('has nothing usual for coarse in a bowl', () => {
  const { amounts, days } = usualRecipe(bowl(18), 'coarse');
  expect([amounts, days]).toEqual([[], null]);
});

it('leaves amounts unscaled without a load', () => {
  for (const capacityKg of [null, 0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(usualRecipe({ type: 'vibratory', capacityKg }, 'medium')).toMatchObject({
      isScaled: false,
      forKg: USUAL_BOWL_KG,
      amounts: [{ supply: 'medium', tablespoons: 2 }],
    });
    const { isScaled, forKg, amounts } = usualRecipe({ type: 'rotary', capacityKg }, 'coarse');
    expect([isScaled, forKg, amounts[0]?.tablespoons]).toEqual([false, KG_PER_LB, 1]);
  }
});

it('lets the owner change, add and leave out', () => {
  const own = {
    tablespoons: { fine: 1.5, borax: 0, polish: 0.5 },
    days: { from: 3, to: 4 },
    note: 'hot water',
  };
  const mine = withOwn(usualRecipe(bowl(18), 'fine'), own);
  expect(mine.amounts).toEqual([
    { supply: 'fine', tablespoons: 1.5, saidBy: 'owner' },
    { supply: 'polish', tablespoons: 0.5, saidBy: 'owner' },
  ]);
  expect(mine.days).toEqual({ from: 3, to: 4, saidBy: 'owner' });
  expect(mine.note).toBe('hot water');
});

it('keeps the usual where the owner says nothing, and says the same twice the same way', () => {
  const spoons = fc.dictionary(fc.constantFrom(...SUPPLIES), fc.double({ min: 0, max: 50, noNaN: true }), {
    noNullPrototype: true,
  }) as fc.Arbitrary<Partial<Record<Supply, number>>>;
  fc.assert(
    fc.property(spoons, fc.constantFrom(...STEPS), (tablespoons, step) => {
      const usual = usualRecipe(bowl(18), step);
      expect(withOwn(usual, {})).toEqual(usual);
      const once = withOwn(usual, { tablespoons });
      expect(withOwn(once, { tablespoons })).toEqual(once);
    }),
  );
});

it('keeps the recipes of machines and steps apart, and takes one back', () => {
  const machine: MachineRecord = { kind: 'machine', id: 'M1', name: 'Bowl', ...bowl(18) };
  const own = sayOwn(sayOwn({}, 'M1', 'fine', { note: 'a' }), 'M2', 'fine', { note: 'b' });
  expect(recipeFor(machine, 'fine', own).note).toBe('a');
  expect(recipeFor(machine, 'polish', own).note).toBe('');
  expect(sayOwn(own, 'M1', 'fine', null)).toEqual({ M2: { fine: { note: 'b' } } });
});

it('weighs a level tablespoon of borax at 12.6 g', () => {
  // Tables of bulk densities: fine borax 53 lb/ft³ = 849 kg/m³; 14.79 ml of it.
  expect(gramsOf('borax', 1)).toBeCloseTo((14.79 * 849) / 1000, 1);
});

it('turns grams back into the spoons they came from', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...SUPPLIES),
      fc.double({ min: 0.01, max: 100, noNaN: true }),
      (supply, spoons) => {
        expect(tablespoonsOf(supply, gramsOf(supply, spoons)) / spoons).toBeCloseTo(1, 9);
      },
    ),
  );
});

it('reads grams as off a kitchen scale', () => {
  expect([0, 0.2, 12.6, 43, 128, 417].map(onTheScale)).toEqual([0, 1, 13, 45, 130, 420]);
});
