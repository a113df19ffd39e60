import type { RoughnessAtIndex } from '../../src/analysis/report';

/**
 * Roughness and its interval at a refractive index, interpolated as the grading does.
 *
 * @param byIndex - One entry or more, ascending in n.
 * @param n - Refractive index; held at the ends.
 */
export function roughnessAt(byIndex: readonly RoughnessAtIndex[], n: number): Omit<RoughnessAtIndex, 'n'> {
  const above = byIndex.find((knot) => knot.n >= n) ?? byIndex[byIndex.length - 1]!;
  const below = byIndex.findLast((knot) => knot.n <= n) ?? byIndex[0]!;
  const share = above.n > below.n ? (n - below.n) / (above.n - below.n) : 0;
  const between = (key: 'alpha' | 'alphaLow' | 'alphaHigh') =>
    below[key] ** (1 - share) * above[key] ** share;
  return { alpha: between('alpha'), alphaLow: between('alphaLow'), alphaHigh: between('alphaHigh') };
}
