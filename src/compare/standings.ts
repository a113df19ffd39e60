import type { CompareWhat } from './compareBy';
import { moreIsBetter } from './compareGroups';
import { fisherExact } from './fisherExact';
import { type GroupSummary, stayOf } from './groupSummary';
import { logRank } from './logRank';
import { type Comparison, rankSum } from './rankSum';

/** How a group stands against another. */
export interface Standing {
  readonly other: GroupSummary;
  /** `open`: it cannot be said that they differ. */
  readonly is: 'better' | 'worse' | 'open';
}

/** Odds that chance alone calls any two of the groups different. */
const FALSE_ALARM = 0.05;

/**
 * Where a group stands against every other that has stones enough.
 *
 * Medians by the rank-sum test, weeks by the log-rank test, shares by Fisher's exact test. The odds are divided among
 * all pairs of groups (Bonferroni), so that it does not matter which pair is looked at and why. Stones of one batch
 * are taken as independent of each other, which they are not quite; `batches` of the summaries says when to doubt.
 *
 * @param one - One of `groups`.
 * @param groups - As compared, in any order.
 * @returns In the order of `groups`; empty when `one` has too few stones.
 * @see Wilcoxon 1945; Mantel 1966; Fisher 1935; Dunn 1961 (division among comparisons).
 */
export function standings(one: GroupSummary, groups: readonly GroupSummary[], what: CompareWhat): Standing[] {
  const able = groups.filter(({ isFew }) => !isFew);
  if (one.isFew) return [];
  const mostOdds = FALSE_ALARM / Math.max(1, (able.length * (able.length - 1)) / 2);
  return able
    .filter((other) => other.key !== one.key)
    .map((other) => ({ other, is: standing(one, other, what, mostOdds) }));
}

function standing(one: GroupSummary, other: GroupSummary, what: CompareWhat, mostOdds: number) {
  const { odds, lean } = comparison(one, other, what);
  if (odds > mostOdds || lean === 0 || contradicts(lean, one.middle, other.middle)) return 'open';
  return lean > 0 === moreIsBetter(what) ? 'better' : 'worse';
}

/** Where ranks and medians point apart, the shapes differ rather than the heights, and nothing is said. */
function contradicts(lean: number, middle: number | null, otherMiddle: number | null): boolean {
  if (middle === null && otherMiddle === null) return false;
  const apart = (middle ?? Number.POSITIVE_INFINITY) - (otherMiddle ?? Number.POSITIVE_INFINITY);
  return apart * lean <= 0;
}

function comparison(one: GroupSummary, other: GroupSummary, what: CompareWhat): Comparison {
  if (what === 'coarse') return logRank(one.figures.map(stayOf), other.figures.map(stayOf));
  if (what === 'finished') {
    return fisherExact(one.known, one.known + one.givenUp, other.known, other.known + other.givenUp);
  }
  return rankSum(
    one.figures.map(({ value }) => value),
    other.figures.map(({ value }) => value),
  );
}
