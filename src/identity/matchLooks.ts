import { munkres } from 'munkres';
import type { StoneLook } from '../measure/stoneLook';
import { lookDistance } from './lookDistance';

/** A stone as earlier checks saw it. */
export interface KnownStone {
  /** One look for each check it was seen in, the newest last. */
  readonly looks: readonly StoneLook[];
  /** Checks since the newest look; 1 when it was seen in the last one. */
  readonly checksAgo: number;
}

/** Which known stone a stone of this check is. */
export interface LookMatch {
  /** Index among the known stones; null when it looks like none of them. */
  readonly known: number | null;
  /** How likely that is right, 0 to 1. */
  readonly confidence: number;
}

/** A stone that differs more than this from a known one is another: a little less than another color alone amounts to. */
const MOST_DISTANCE = 14;
/** Log odds that a match is right grow by this for each unit that the next best way to match all stones is worse. Fitted on the development batches. */
const ODDS_PER_UNIT = 1.6;
/** Log odds at no margin at all. */
const ODDS_AT_NONE = -1.4;
/** That a stone is a new one is never taken without asking: batches seldom gain stones, and a face not seen before looks like one. */
const MOST_FOR_NONE = 0.5;
const FORBIDDEN = 1e6;
const MOST_MARGIN = 20;

/**
 * Matches the stones of a check to the known ones, each to at most one, so that all together differ least.
 *
 * @param seen - The stones of this check, in any order.
 * @param known - The stones that may be among them.
 * @returns One match for each seen stone, in their order.
 */
export function matchLooks(seen: readonly StoneLook[], known: readonly KnownStone[]): LookMatch[] {
  if (seen.length === 0) return [];
  const costs = seen.map((look) => [
    ...known.map((stone) => distanceTo(look, stone)),
    // A place of its own for each seen stone that is none of the known.
    ...seen.map(() => MOST_DISTANCE),
  ]);
  const best = assigned(costs);
  const least = totalOf(costs, best);
  return best.map((column, row) => {
    const without = costs.map((line, i) =>
      i === row ? line.map((cost, j) => (isSame(j, column, known.length) ? FORBIDDEN : cost)) : line,
    );
    const margin = Math.min(MOST_MARGIN, totalOf(without, assigned(without)) - least);
    const confidence = 1 / (1 + Math.exp(-(ODDS_AT_NONE + ODDS_PER_UNIT * margin)));
    return column < known.length
      ? { known: column, confidence }
      : { known: null, confidence: Math.min(MOST_FOR_NONE, confidence) };
  });
}

/** All places for none are one and the same answer. */
const isSame = (column: number, taken: number, knownCount: number) =>
  column === taken || (taken >= knownCount && column >= knownCount);

/** The nearest of its faces, and its size since the newest look. */
function distanceTo(look: StoneLook, { looks, checksAgo }: KnownStone): number {
  const newest = looks.at(-1);
  if (!newest) return MOST_DISTANCE;
  return Math.min(...looks.map((face) => lookDistance(look, { ...face, size: newest.size }, checksAgo)));
}

/** Column of each row. */
function assigned(costs: readonly (readonly number[])[]): number[] {
  const columns = new Array<number>(costs.length).fill(-1);
  for (const [row, column] of munkres(costs.map((line) => [...line]))) columns[row] = column;
  return columns;
}

const totalOf = (costs: readonly (readonly number[])[], columns: readonly number[]) =>
  columns.reduce((sum, column, row) => sum + costs[row]![column]!, 0);
