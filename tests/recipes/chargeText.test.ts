import { expect, it } from 'vitest';
import { chargeText } from '../../src/recipes/chargeText';
import { usualRecipe } from '../../src/recipes/recipe';

it('writes a charge as one would', () => {
  const recipe = usualRecipe({ type: 'vibratory', capacityKg: 18 * 0.45359237 }, 'fine');
  expect(chargeText(recipe)).toBe('1 tablespoon of 600 silicon carbide, with 1 tablespoon of borax');
  expect(chargeText({ amounts: [] })).toBe('');
});
