import type { Comparison } from './rankSum';

/** Tables as likely as the one seen, but for rounding, count as well. */
const AS_LIKELY = 1 + 1e-7;

/**
 * Fisher's exact test of two counted shares.
 *
 * @param hits - How many of the first group, 0 to `count`.
 * @param count - Size of the first group, 1 or more.
 * @param otherHits - How many of the second.
 * @param otherCount - Size of the second, 1 or more.
 * @returns Odds that chance alone makes a table no likelier than this one; lean, the difference of the shares.
 * @see Fisher 1935, The Design of Experiments, chapter 2.
 */
export function fisherExact(hits: number, count: number, otherHits: number, otherCount: number): Comparison {
  const allHits = hits + otherHits;
  const logs = logFactorials(count + otherCount);
  const choose = (n: number, k: number) => (logs[n] ?? 0) - (logs[k] ?? 0) - (logs[n - k] ?? 0);
  const whole = choose(count + otherCount, allHits);
  const odds = (k: number) => Math.exp(choose(count, k) + choose(otherCount, allHits - k) - whole);
  const seen = odds(hits) * AS_LIKELY;
  let sum = 0;
  for (let k = Math.max(0, allHits - otherCount); k <= Math.min(count, allHits); k++) {
    const one = odds(k);
    if (one <= seen) sum += one;
  }
  return { odds: Math.min(1, sum), lean: hits / count - otherHits / otherCount };
}

function logFactorials(most: number): Float64Array {
  const logs = new Float64Array(most + 1);
  for (let k = 2; k <= most; k++) logs[k] = (logs[k - 1] ?? 0) + Math.log(k);
  return logs;
}
