import { texts } from '../texts/speech';

/** A level US tablespoon, ml: half a US fluid ounce (NIST SP 430) of 29.57353 ml (NIST SP 811, appendix B.8). */
export const ML_PER_TABLESPOON = 29.57353 / 2;

/** Teaspoons of a tablespoon. Source: NIST SP 430. */
export const TEASPOONS = 3;

/** A pound, kg; exact. Source: NIST SP 811, appendix B.8. */
export const KG_PER_LB = 0.45359237;

/** What a person measures out: a count in quarters. */
export interface Spoons {
  /** A multiple of a quarter, above 0. */
  readonly count: number;
  readonly unit: 'tablespoon' | 'teaspoon';
}

/**
 * An amount as a person measures it: quarter teaspoons below a tablespoon, then quarter tablespoons, halves from 4 and
 * whole ones from 8. Off by at most an eighth of a teaspoon below a tablespoon, and by an eighth of the amount above.
 *
 * @param tablespoons - 0 or more.
 * @returns Null for nothing; else a quarter teaspoon at least.
 * @throws RangeError for what is no amount.
 */
export function atTheBench(tablespoons: number): Spoons | null {
  if (!(tablespoons >= 0 && tablespoons < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`${tablespoons} tablespoons are no amount.`);
  }
  if (tablespoons === 0) return null;
  const teaspoons = Math.max(0.25, toNearest(TEASPOONS * tablespoons, 0.25));
  if (teaspoons < TEASPOONS) return { count: teaspoons, unit: 'teaspoon' };
  const grid = tablespoons < 4 ? 0.25 : tablespoons < 8 ? 0.5 : 1;
  return { count: Math.max(1, toNearest(tablespoons, grid)), unit: 'tablespoon' };
}

/** The amount that was measured out, tablespoons. */
export const inTablespoons = ({ count, unit }: Spoons): number =>
  unit === 'tablespoon' ? count : count / TEASPOONS;

/** "2 ½ tablespoons", "¾ teaspoon". */
export function spoonWords({ count, unit }: Spoons): string {
  const whole = Math.floor(count);
  const quarter = QUARTERS[Math.round(4 * (count - whole))] ?? '';
  const number = whole === 0 ? quarter : quarter === '' ? `${whole}` : `${whole} ${quarter}`;
  const { tablespoons, teaspoons } = texts().plan;
  return (unit === 'tablespoon' ? tablespoons : teaspoons)(number, count);
}

const QUARTERS = ['', '¼', '½', '¾'];
const toNearest = (value: number, grid: number) => grid * Math.round(value / grid);
