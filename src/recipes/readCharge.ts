import type { Step } from '../grading/steps';
import type { Charge } from './chargeText';
import { TEASPOONS } from './spoons';
import { SUPPLIES, type Supply, tablespoonsOf } from './supplies';

/**
 * Names of each supply in every language, as journals hold them; a name that is no longer spoken has to stay. In small
 * letters; for silicon carbide in German one of its two spellings.
 */
const NAMES: Readonly<Record<Supply, readonly string[]>> = {
  coarse: ['60/90 silicon carbide', 'siliciumcarbid 60/90'],
  medium: ['220 silicon carbide', 'siliciumcarbid 220'],
  fine: ['600 silicon carbide', 'siliciumcarbid 600'],
  prepolish: ['1500 silicon carbide', 'siliciumcarbid 1500'],
  polish: ['aluminum oxide polish', 'aluminiumoxid-politur'],
  borax: ['borax'],
};

const FRACTIONS: Readonly<Record<string, number>> = {
  '¼': 1 / 4,
  '½': 1 / 2,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
};
const NUMBER = String.raw`(?<whole>\d+(?:[.,]\d+)?)?\s*(?:(?<sign>[¼½¾⅓⅔])|(?<over>\d+)\/(?<under>\d+))?`;
const HEAP = 'level|heaped|gestrichene[rn]?|gehäufte[rn]?';
const TABLESPOON = 'tablespoons?|tbsp|e(?:ss|ß)l(?:ö|oe)ffeln?|el';
const TEASPOON = 'teaspoons?|tsp|teel(?:ö|oe)ffeln?|tl';
const GRAM = 'grams?|gramm|g';
const PART = new RegExp(
  String.raw`(?:^|\s)${NUMBER}\s*(?:(?:${HEAP})\s+)?(?:(?<tablespoon>${TABLESPOON})|(?<teaspoon>${TEASPOON})|${GRAM})\b(?<rest>.*)$`,
  'iu',
);
/** What stands between two amounts; a comma before a digit is a decimal mark. */
const BETWEEN = /[;:+]|,(?!\d)|\b(?:and|with|plus|und|mit|dazu|sowie)\b/iu;
/** Marks of an amount that depends on the load. */
const PER = /\b(?:per|je|pro)\b|\//iu;

/**
 * What went in, read from the owner's words or ours, in whichever language they were written.
 *
 * @param step - What is not named is this step's abrasive.
 * @returns Null where the words give no amount, or one that depends on the load ("per pound").
 */
export function readCharge(text: string, step: Step): Charge | null {
  const words = text.normalize('NFC');
  const parts = words.split(BETWEEN).map((part) => readPart(part, step));
  if (PER.test(words.replace(/\d+\s*\/\s*\d+/g, '')) || parts.every((part) => part === null)) return null;
  const charge: Partial<Record<Supply, number>> = {};
  for (const part of parts) {
    if (part !== null) charge[part.supply] = (charge[part.supply] ?? 0) + part.tablespoons;
  }
  return charge;
}

function readPart(part: string, step: Step): { supply: Supply; tablespoons: number } | null {
  const found = PART.exec(part)?.groups;
  if (found === undefined) return null;
  const { whole, sign, over, under, rest = '' } = found;
  const fraction =
    sign !== undefined ? FRACTIONS[sign]! : over !== undefined ? Number(over) / Number(under) : 0;
  const amount = Number((whole ?? '0').replace(',', '.')) + fraction;
  if (!(amount > 0 && Number.isFinite(amount))) return null;
  const supply = namedIn(rest) ?? step;
  if (found.tablespoon !== undefined) return { supply, tablespoons: amount };
  const tablespoons = found.teaspoon === undefined ? tablespoonsOf(supply, amount) : amount / TEASPOONS;
  return { supply, tablespoons };
}

function namedIn(words: string): Supply | undefined {
  const spelled = words.toLowerCase().replaceAll('silizium', 'silicium').replaceAll('karbid', 'carbid');
  return SUPPLIES.find((supply) => NAMES[supply].some((name) => spelled.includes(name)));
}
