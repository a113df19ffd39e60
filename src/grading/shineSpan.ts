import type { ShineFigures } from './shineFigures';
import type { ShineRange } from './shineRange';

/** A figure and the ends of its range. */
export interface ShineSpan {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Smallest and largest value that one figure takes.
 *
 * @param pick - The figure; null where it is unknown.
 * @returns Null when it is unknown throughout.
 */
export function shineSpan(
  { best, others }: ShineRange,
  pick: (figures: ShineFigures) => number | null,
): ShineSpan | null {
  const value = pick(best);
  if (value === null) return null;
  const all = [value, ...others.map(pick).filter((other) => other !== null)];
  return { value, low: Math.min(...all), high: Math.max(...all) };
}
