import { normalTail } from './normalTail';
import type { Comparison } from './rankSum';
import type { Stay } from './stay';

/**
 * Log-rank test of two groups of stays. What was given up stays among those that could leave for good, as in Gray's
 * test of 1988 where all are seen to the end; it never leaves.
 *
 * @param first - In any order, at least one.
 * @param second - Likewise.
 * @returns Two-sided odds by the normal curve; lean above zero when the first group leaves later.
 * @see Mantel 1966; Peto & Peto 1972.
 */
export function logRank(first: readonly Stay[], second: readonly Stay[]): Comparison {
  const [ours, theirs] = [byTime(first), byTime(second)];
  const times = [
    ...new Set([...ours, ...theirs].filter(({ end }) => end === 'left').map(({ time }) => time)),
  ];
  let [expected, seen, variance] = [0, 0, 0];
  let [i, j] = [0, 0];
  for (const time of times.sort((a, b) => a - b)) {
    while (i < ours.length && ours[i]!.time < time) i++;
    while (j < theirs.length && theirs[j]!.time < time) j++;
    const here = ours.length - i;
    const all = here + theirs.length - j;
    const left = leftAt(ours, i, time);
    const leftOfAll = left + leftAt(theirs, j, time);
    seen += left;
    expected += (leftOfAll * here) / all;
    if (all > 1) {
      variance += ((leftOfAll * here * (all - here)) / all ** 2) * ((all - leftOfAll) / (all - 1));
    }
  }
  const lean = expected - seen;
  return { odds: variance > 0 ? Math.min(1, 2 * normalTail(Math.abs(lean) / Math.sqrt(variance))) : 1, lean };
}

function byTime(stays: readonly Stay[]): Stay[] {
  return stays
    .map(({ time, end }): Stay => ({ time: end === 'given up' ? Number.POSITIVE_INFINITY : time, end }))
    .sort((a, b) => a.time - b.time);
}

function leftAt(sorted: readonly Stay[], from: number, time: number): number {
  let count = 0;
  for (let k = from; sorted[k]?.time === time; k++) if (sorted[k]?.end === 'left') count++;
  return count;
}
