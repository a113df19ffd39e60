import { exactRankSum } from './exactRankSum';
import { normalTail } from './normalTail';

/** How two samples compare. */
export interface Comparison {
  /** How likely chance alone sets two equal groups at least this far apart, 0 to 1; two-sided. */
  readonly odds: number;
  /** Above zero when the first sample's values are mostly the greater ones, below when the lesser. */
  readonly lean: number;
}

/** Up to so many values in the smaller sample all arrangements are counted; above, the normal curve is near enough. */
const MOST_COUNTED = 8;
const MOST_BESIDE = 100;

/**
 * Wilcoxon–Mann–Whitney rank-sum test of two samples of any distribution.
 *
 * Exact for small samples without ties, else by the normal curve with corrections for ties and continuity.
 *
 * @param first - Values from the least to the greatest, at least one.
 * @param second - Likewise.
 * @see Mann & Whitney 1947; Lehmann 1975, Nonparametrics, chapter 1 (ties).
 */
export function rankSum(first: readonly number[], second: readonly number[]): Comparison {
  const [m, n] = [first.length, second.length];
  const { wins, tieSum } = countWins(first, second);
  const lean = wins - (m * n) / 2;
  if (tieSum === 0 && Math.min(m, n) <= MOST_COUNTED && Math.max(m, n) <= MOST_BESIDE) {
    return { odds: exactRankSum(Math.min(wins, m * n - wins), m, n), lean };
  }
  const all = m + n;
  const variance = ((m * n) / 12) * (all + 1 - tieSum / (all * (all - 1)));
  if (variance <= 0) return { odds: 1, lean };
  const z = Math.max(0, Math.abs(lean) - 0.5) / Math.sqrt(variance);
  return { odds: Math.min(1, 2 * normalTail(z)), lean };
}

/** Pairs in which the first sample's value is the greater, a tie as half; and t³ − t summed over tied values. */
function countWins(first: readonly number[], second: readonly number[]) {
  let [wins, tieSum, i, j] = [0, 0, 0, 0];
  while (i < first.length || j < second.length) {
    const value = Math.min(first[i] ?? Number.POSITIVE_INFINITY, second[j] ?? Number.POSITIVE_INFINITY);
    const below = j;
    const [fromI, fromJ] = [i, j];
    while (i < first.length && first[i] === value) i++;
    while (j < second.length && second[j] === value) j++;
    const [here, there] = [i - fromI, j - fromJ];
    wins += here * (below + there / 2);
    tieSum += (here + there) ** 3 - (here + there);
  }
  return { wins, tieSum };
}
