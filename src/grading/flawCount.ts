import type { MeasuredFlaw } from './measuredStone';
import { plainNumber } from './plainNumber';

const PLURALS: Readonly<Record<MeasuredFlaw['kind'], string>> = {
  pit: 'pits',
  fracture: 'fractures',
  chip: 'chips',
  scratch: 'scratches',
};

/**
 * An amount of flaws in words.
 *
 * @param amount - A count or a density, 0 or more.
 * @param kind - Kind of the flaws.
 * @returns "no pits", "1 fracture", "0.2 pits", "3 scratches".
 */
export function flawCount(amount: number, kind: MeasuredFlaw['kind']): string {
  if (amount === 0) return `no ${PLURALS[kind]}`;
  const number = plainNumber(amount);
  return `${number} ${number === '1' ? kind : PLURALS[kind]}`;
}
