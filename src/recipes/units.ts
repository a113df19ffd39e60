import { plainNumber } from '../texts/plainNumber';
import { texts } from '../texts/speech';
import { atTheBench, KG_PER_LB, spoonWords } from './spoons';
import { gramsOf, onTheScale, type Supply } from './supplies';

/** What the owner reads sizes, amounts and weights in. */
export interface Units {
  readonly length: 'mm' | 'inch';
  readonly amount: 'spoons' | 'grams';
  readonly weight: 'kg' | 'lb';
}

export const FIRST_UNITS: Units = { length: 'mm', amount: 'spoons', weight: 'kg' };

/** Takes over what is sound of what was kept; the first units for anything else. */
export function checkedUnits(kept: unknown): Units {
  const said: Readonly<Record<string, unknown>> =
    typeof kept === 'object' && kept !== null ? { ...kept } : {};
  const one = <T extends string>(value: unknown, choices: readonly [T, T]): T =>
    choices.find((choice) => choice === value) ?? choices[0];
  return {
    length: one(said.length, ['mm', 'inch']),
    amount: one(said.amount, ['spoons', 'grams']),
    weight: one(said.weight, ['kg', 'lb']),
  };
}

/** Ounces of a pound. Source: NIST SP 811, appendix B.8. */
const OZ_PER_LB = 16;

/** "2.7 kg", "450 g"; "6 lb", "12 oz". */
export function weightWords(kg: number, { weight }: Pick<Units, 'weight'>): string {
  const lb = kg / KG_PER_LB;
  if (weight === 'kg') return kg > 0 && kg < 1 ? `${plainNumber(1000 * kg)} g` : `${plainNumber(kg)} kg`;
  return lb > 0 && lb < 0.95 ? `${plainNumber(OZ_PER_LB * lb)} oz` : `${plainNumber(lb)} lb`;
}

/** A level amount in both measures, the owner's first: "2 tablespoons" and "about 40 g". */
export function amountWords(
  supply: Supply,
  tablespoons: number,
  { amount }: Pick<Units, 'amount'>,
): { readonly first: string; readonly second: string } {
  const spoons = atTheBench(tablespoons);
  const { nothing, about } = texts().plan;
  const inSpoons = spoons === null ? nothing : spoonWords(spoons);
  const grams = onTheScale(gramsOf(supply, tablespoons));
  return amount === 'spoons'
    ? { first: inSpoons, second: about(`${grams} g`) }
    : { first: `${grams} g`, second: about(inSpoons) };
}
