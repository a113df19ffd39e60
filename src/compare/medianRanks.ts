/** Fewer values than this hold no 95 % interval for their median: the ends of five hold it in 94 % of cases only. */
export const FEWEST_FOR_MEDIAN = 6;

const MISSED_AT_EACH_END = 0.025;

/**
 * Ranks of the values between which the median lies in at least 95 % of cases, whatever the distribution.
 *
 * The number of values below the median is binomial with odds of one half.
 *
 * @param count - How many values there are.
 * @returns Ranks counted from 1 for the least value; null for fewer than 6 values.
 * @see David & Nagaraja 2003, Order Statistics, section 7.1.
 */
export function medianRanks(count: number): readonly [low: number, high: number] | null {
  if (count < FEWEST_FOR_MEDIAN) return null;
  let logOdds = -count * Math.LN2;
  let missed = Math.exp(logOdds);
  let low = 0;
  while (missed <= MISSED_AT_EACH_END) {
    low++;
    logOdds += Math.log((count - low + 1) / low);
    missed += Math.exp(logOdds);
  }
  return [low, count + 1 - low];
}
