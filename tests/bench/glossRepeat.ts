import type { GlossRow } from './glossRow';
import { groupedBy } from './groupedBy';
import type { Verdict } from './realVerdict';

const MOST_SPREAD_GU = 4;

/** How much the 60° gloss of the same stones differs between photos. */
export interface Repeatability {
  /** Stones with a number in two photos or more. */
  readonly stones: number;
  readonly numbers: number;
  /** Standard deviation within a stone, pooled over the stones, gloss units; NaN without stones. */
  readonly pooledSdGu: number;
  /** The least repeatable stones first. */
  readonly byStone: readonly {
    readonly stone: string;
    readonly alpha: number;
    readonly gu60: readonly number[];
    readonly sdGu: number;
  }[];
}

/**
 * Spread of repeated readings of the same stones.
 *
 * @param rows - Rows whose `sameStone` names the stone; others and those without a number are left out.
 * @see ISO 5725-2, repeatability standard deviation: root of the variances' mean weighted by degrees of freedom.
 */
export function repeatability(rows: readonly GlossRow[]): Repeatability {
  const groups = groupedBy(
    rows.filter(({ sameStone, reading }) => sameStone !== null && reading !== null),
    ({ sameStone }) => sameStone!,
  );
  const byStone = [...groups]
    .filter(([, same]) => same.length > 1)
    .map(([stone, same]) => {
      const gu60 = same.map(({ reading }) => reading!.gu60);
      return { stone, alpha: same[0]!.alpha, gu60, sdGu: Math.sqrt(squares(gu60) / (gu60.length - 1)) };
    })
    .sort((a, b) => b.sdGu - a.sdGu);
  const sum = byStone.reduce((total, { gu60 }) => total + squares(gu60), 0);
  const freedom = byStone.reduce((total, { gu60 }) => total + gu60.length - 1, 0);
  const numbers = byStone.reduce((total, { gu60 }) => total + gu60.length, 0);
  return { stones: byStone.length, numbers, pooledSdGu: Math.sqrt(sum / freedom), byStone };
}

/** The repeatability target and what came of it. */
export function repeatVerdict({ stones, numbers, pooledSdGu }: Repeatability): Verdict {
  return {
    what: `60° gloss of ${stones} stones turned, ${numbers} readings: standard deviation`,
    measured: `${pooledSdGu.toFixed(2)} GU`,
    target: `≤ ${MOST_SPREAD_GU} GU`,
    met: pooledSdGu <= MOST_SPREAD_GU,
  };
}

/** Sum of squared distances from the mean. */
function squares(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
}
