import type { StoneDigest } from '../history/batchDigest';
import type { CompareBy, CompareWhat } from './compareBy';
import { groupStones } from './groupStones';
import { type GroupSummary, groupSummary } from './groupSummary';

/** A comparison, ready to be shown. */
export interface ComparedGroups {
  /** Best first, among equals the one with more stones; groups with too few stones last, the most stones first. */
  readonly groups: readonly GroupSummary[];
  /** Stones of which nothing was kept that gives the figure. */
  readonly without: number;
}

/** Puts stones together and sums up each group. */
export function compareGroups(
  stones: readonly StoneDigest[],
  by: CompareBy,
  what: CompareWhat,
  batchNames: ReadonlyMap<string, string>,
): ComparedGroups {
  const groups = groupStones(stones, by, batchNames)
    .map((group) => groupSummary(group, what))
    .filter((summary) => summary !== null)
    .sort(
      (a, b) => place(a, what) - place(b, what) || b.known - a.known || b.figures.length - a.figures.length,
    );
  return { groups, without: stones.length - groups.reduce((sum, { figures }) => sum + figures.length, 0) };
}

/** True when more is better: gloss and finished stones, not weeks and loss. */
export const moreIsBetter = (what: CompareWhat) => what === 'gloss' || what === 'finished';

/** Sorts best first; after all that have a middle those of which half never left coarse, then those with too few. */
function place({ isFew, middle }: GroupSummary, what: CompareWhat): number {
  if (isFew) return Number.MAX_VALUE;
  if (middle === null) return Number.MAX_SAFE_INTEGER;
  return moreIsBetter(what) ? -middle : middle;
}
