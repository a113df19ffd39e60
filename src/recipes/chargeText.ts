import { texts } from '../texts/speech';
import type { Amount, Recipe } from './recipe';
import { atTheBench, inTablespoons, spoonWords } from './spoons';
import { type Supply, supplyName } from './supplies';

/** Level tablespoons of what went in. */
export type Charge = Readonly<Partial<Record<Supply, number>>>;

/** A recipe's amounts as they are measured out. */
export function chargeOf({ amounts }: Pick<Recipe, 'amounts'>): Charge {
  return Object.fromEntries(
    amounts.flatMap(({ supply, tablespoons }) => {
      const spoons = atTheBench(tablespoons);
      return spoons === null ? [] : [[supply, inTablespoons(spoons)]];
    }),
  );
}

/**
 * "2 tablespoons of 220 silicon carbide, with ¾ teaspoon of borax", in the language spoken; empty without amounts. A
 * journal keeps it so; `readCharge` reads it back, whatever language is spoken then.
 */
export function chargeText({ amounts }: Pick<Recipe, 'amounts'>): string {
  return amounts.flatMap(partText).join(texts().plan.with);
}

function partText({ supply, tablespoons }: Amount): string[] {
  const spoons = atTheBench(tablespoons);
  return spoons === null ? [] : [texts().plan.amountOf(spoonWords(spoons), supplyName(supply))];
}
