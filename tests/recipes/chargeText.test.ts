import fc from 'fast-check';
import { expect, it } from 'vitest';
import { STEP_FACTS, STEPS } from '../../src/grading/steps';
import { chargeOf, chargeText, readCharge } from '../../src/recipes/chargeText';
import { usualRecipe } from '../../src/recipes/recipe';
import { gramsOf } from '../../src/recipes/supplies';

it('writes a charge as one would', () => {
  const recipe = usualRecipe({ type: 'vibratory', capacityKg: 18 * 0.45359237 }, 'fine');
  expect(chargeText(recipe)).toBe('1 tablespoon of 600 silicon carbide, with 1 tablespoon of borax');
  expect(chargeText({ amounts: [] })).toBe('');
});

it('reads back what it wrote', () => {
  const kg = fc.double({ min: 0.2, max: 60, noNaN: true });
  fc.assert(
    fc.property(
      kg,
      fc.constantFrom(...STEPS),
      fc.constantFrom('rotary', 'vibratory'),
      (capacityKg, step, type) => {
        const recipe = usualRecipe({ type, capacityKg }, step);
        const charge = chargeOf(recipe);
        const read = readCharge(chargeText(recipe), step);
        if (recipe.amounts.length === 0) expect(read).toBeNull();
        else {
          expect(Object.keys(read!)).toEqual(Object.keys(charge));
          for (const [supply, tablespoons] of Object.entries(charge)) {
            expect(read![supply as keyof typeof charge]).toBeCloseTo(tablespoons, 9);
          }
        }
      },
    ),
  );
});

it('reads what the owner writes', () => {
  expect(readCharge('1 tablespoon, with 1 tablespoon of borax', 'polish')).toEqual({ polish: 1, borax: 1 });
  expect(readCharge('2 ½ tbsp 220', 'medium')).toEqual({ medium: 2.5 });
  expect(readCharge('1 1/2 tablespoons', 'medium')).toEqual({ medium: 1.5 });
  expect(readCharge('1/2 tablespoon and 3 teaspoons of borax', 'fine')).toEqual({ fine: 0.5, borax: 1 });
  expect(readCharge('2,5 tablespoons', 'medium')).toEqual({ medium: 2.5 });
  expect(gramsOf('coarse', readCharge('60/90 silicon carbide: 120 g', 'coarse')?.coarse ?? 0)).toBeCloseTo(
    120,
    9,
  );
});

it('reads no amount where none is fixed', () => {
  expect(readCharge(`${STEP_FACTS.coarse.grit}: ${STEP_FACTS.coarse.charge}`, 'coarse')).toBeNull();
  for (const text of [
    '',
    'as always',
    '30 g/lb',
    'a spoon or two',
    '0 tablespoons',
    '1/0 tablespoon',
    '220 grit',
  ]) {
    expect(readCharge(text, 'coarse'), text).toBeNull();
  }
});
