import { turnedApart } from '../measure/silhouette';

/** Whether two photos of a stone show it from the same side. */
export type SideUp = 'same' | 'other' | 'unknown';

/**
 * Ratio of misfits, as a logarithm, from which a side is told. On the development batches of the identity bench it is
 * told of half of the pairs, and nine times in ten rightly.
 */
const TELLS = 0.2;

/**
 * A stone turned over shows its silhouette mirrored: does it fit better as it is, or mirrored?
 *
 * @param a - Silhouette, see `measure/silhouette`.
 * @param b - The same stone's in another photo.
 * @returns `unknown` for stones that look much the same mirrored, and tipped ones.
 */
export function sideUp(a: readonly number[], b: readonly number[]): SideUp {
  const ratio = Math.log((turnedApart(a, b) + LEAST) / (turnedApart(a, b.toReversed()) + LEAST));
  return ratio < -TELLS ? 'same' : ratio > TELLS ? 'other' : 'unknown';
}

/** Misfit of two photos of one side at the very best. */
const LEAST = 0.002;
