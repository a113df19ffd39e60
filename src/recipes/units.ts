import { plainNumber } from '../grading/plainNumber';
import { atTheBench, KG_PER_LB, spoonWords } from './spoons';
import { gramsOf, onTheScale, type Supply } from './supplies';

/** What the owner reads sizes, amounts and weights in. */
export interface Units {
  readonly length: 'mm' | 'inch';
  readonly amount: 'spoons' | 'grams';
  readonly weight: 'kg' | 'lb';
}

export const FIRST_UNITS: Units = { length: 'mm', amount: 'spoons', weight: 'kg' };

/** Millimeters of an inch; exact. Source: NIST SP 811, appendix B.8. */
const MM_PER_INCH = 25.4;

/** "31 mm", "1.2 in". */
export const lengthWords = (mm: number, { length }: Pick<Units, 'length'>): string =>
  length === 'mm' ? `${plainNumber(mm)} mm` : `${plainNumber(mm / MM_PER_INCH)} in`;

/** "2.7 kg", "6 lb". */
export const weightWords = (kg: number, { weight }: Pick<Units, 'weight'>): string =>
  weight === 'kg' ? `${plainNumber(kg)} kg` : `${plainNumber(kg / KG_PER_LB)} lb`;

/** A level amount in both measures, the owner's first: "2 tablespoons" and "about 40 g". */
export function amountWords(
  supply: Supply,
  tablespoons: number,
  { amount }: Pick<Units, 'amount'>,
): { readonly first: string; readonly second: string } {
  const spoons = atTheBench(tablespoons);
  const inSpoons = spoons === null ? 'nothing' : spoonWords(spoons);
  const grams = onTheScale(gramsOf(supply, tablespoons));
  return amount === 'spoons'
    ? { first: inSpoons, second: `about ${grams} g` }
    : { first: `${grams} g`, second: `about ${inSpoons}` };
}
