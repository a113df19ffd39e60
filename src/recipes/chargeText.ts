import type { Step } from '../grading/steps';
import type { Amount, Recipe } from './recipe';
import { atTheBench, inTablespoons, spoonWords, TEASPOONS } from './spoons';
import { SUPPLIES, SUPPLY_FACTS, type Supply, tablespoonsOf } from './supplies';

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

/** "2 tablespoons of 220 silicon carbide, with ¾ teaspoon of borax"; empty without amounts. `readCharge` reads it back. */
export function chargeText({ amounts }: Pick<Recipe, 'amounts'>): string {
  return amounts.flatMap(partText).join(', with ');
}

function partText({ supply, tablespoons }: Amount): string[] {
  const spoons = atTheBench(tablespoons);
  return spoons === null ? [] : [`${spoonWords(spoons)} of ${SUPPLY_FACTS[supply].name}`];
}

const FRACTIONS: Readonly<Record<string, number>> = {
  '¼': 1 / 4,
  '½': 1 / 2,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
};
const NUMBER = String.raw`(?<whole>\d+(?:[.,]\d+)?)?\s*(?:(?<sign>[¼½¾⅓⅔])|(?<over>\d+)\/(?<under>\d+))?`;
const PART = new RegExp(
  String.raw`(?:^|\s)${NUMBER}\s*(?:level\s+|heaped\s+)?(?<unit>tablespoons?|tbsp|teaspoons?|tsp|grams?|g)\b(?<rest>.*)$`,
  'iu',
);

/**
 * What went in, read from the owner's words.
 *
 * @param step - What is not named is this step's abrasive.
 * @returns Null where the words give no amount, or one that depends on the load ("per pound").
 */
export function readCharge(text: string, step: Step): Charge | null {
  const parts = text.split(/[;:+]|,(?!\d)|\band\b/iu).map((part) => readPart(part, step));
  if (/\bper\b|\//iu.test(text.replace(/\d+\s*\/\s*\d+/g, '')) || parts.every((part) => part === null))
    return null;
  const charge: Partial<Record<Supply, number>> = {};
  for (const part of parts) {
    if (part !== null) charge[part.supply] = (charge[part.supply] ?? 0) + part.tablespoons;
  }
  return charge;
}

function readPart(part: string, step: Step): { supply: Supply; tablespoons: number } | null {
  const found = PART.exec(part)?.groups;
  if (found === undefined) return null;
  const { whole, sign, over, under, unit = '', rest = '' } = found;
  const fraction =
    sign !== undefined ? FRACTIONS[sign]! : over !== undefined ? Number(over) / Number(under) : 0;
  const amount = Number((whole ?? '0').replace(',', '.')) + fraction;
  if (!(amount > 0 && Number.isFinite(amount))) return null;
  const named = SUPPLIES.find((one) => rest.includes(SUPPLY_FACTS[one].name));
  const supply = named ?? step;
  const isSpoon = /^t(ab|bs)/iu.test(unit);
  const tablespoons = isSpoon
    ? amount
    : /^t/iu.test(unit)
      ? amount / TEASPOONS
      : tablespoonsOf(supply, amount);
  return { supply, tablespoons };
}
