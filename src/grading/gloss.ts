import { glossUnits } from '../optics/glossUnits';
import { ceilingGu60 } from './ceilingGu60';
import { type Finish, finishOf } from './finish';
import { type GlossLevel, glossLevel } from './glossLevel';
import type { MaterialName } from './materials';
import type { RoughnessAtIndex } from './measuredStone';
import { refractiveIndex } from './refractiveIndex';

/** Estimated gloss of a stone. Intervals hold the photo's 90 % interval and the material's range of index. */
export interface Gloss {
  readonly alpha: number;
  readonly alphaLow: number;
  readonly alphaHigh: number;
  readonly gu60: number;
  readonly gu60Low: number;
  readonly gu60High: number;
  readonly gu20: number;
  readonly gu85: number;
  readonly finish: Finish;
  /** The published gloss level, which the 85° reading helps to name. */
  readonly level: GlossLevel;
  /** 60° gloss that a perfect polish of the material would read. */
  readonly ceilingGu60: number;
  /** gu60 over the ceiling, 0 to about 1. */
  readonly shareOfCeiling: number;
  readonly shareOfCeilingLow: number;
  readonly shareOfCeilingHigh: number;
  /** Likeliest refractive index of the material. */
  readonly n: number;
  /** Roughness at the lowest, the likeliest and the highest index of the material. */
  readonly atIndexes: readonly RoughnessAtIndex[];
}

/**
 * Gloss of a highlight, for a material.
 *
 * @param byIndex - Roughness for one refractive index or more, ascending in n; taken on between them, held at the ends.
 * @param material - Null when nothing was said about the stone: its interval is then wider.
 * @returns Estimates of what a gloss meter would read on a flat of the same finish.
 * @throws RangeError if byIndex is empty.
 * @see ISO 2813 / ASTM D523 for the readings.
 */
export function glossOf(byIndex: readonly RoughnessAtIndex[], material: MaterialName | null): Gloss {
  const index = refractiveIndex(material);
  const atIndexes = [index.low, index.n, index.high].map((n) => ({ n, ...roughnessAt(byIndex, n) }));
  const { n, alpha, alphaLow, alphaHigh } = atIndexes[1]!;
  const [gu20, gu60, gu85] = [glossUnits(alpha, n, 20), glossUnits(alpha, n, 60), glossUnits(alpha, n, 85)];
  const ceiling = ceilingGu60(n);
  const ends = atIndexes.map((there) => {
    const least = glossUnits(there.alphaHigh, there.n, 60);
    return { n: there.n, least, most: glossUnits(there.alphaLow, there.n, 60) };
  });
  return {
    alpha,
    alphaLow,
    alphaHigh,
    gu60,
    gu60Low: Math.min(gu60, ...ends.map(({ least }) => least)),
    gu60High: Math.max(gu60, ...ends.map(({ most }) => most)),
    gu20,
    gu85,
    finish: finishOf(gu60),
    level: glossLevel(gu60, gu85),
    ceilingGu60: ceiling,
    shareOfCeiling: gu60 / ceiling,
    shareOfCeilingLow: Math.min(gu60 / ceiling, ...ends.map(({ n, least }) => least / ceilingGu60(n))),
    shareOfCeilingHigh: Math.max(gu60 / ceiling, ...ends.map(({ n, most }) => most / ceilingGu60(n))),
    n,
    atIndexes,
  };
}

function roughnessAt(byIndex: readonly RoughnessAtIndex[], n: number): Omit<RoughnessAtIndex, 'n'> {
  const first = byIndex[0];
  const last = byIndex.at(-1);
  if (!first || !last)
    throw new RangeError('A highlight needs its roughness for at least one refractive index.');
  const above = byIndex.find((knot) => knot.n >= n) ?? last;
  const below = byIndex.findLast((knot) => knot.n <= n) ?? first;
  const share = above.n > below.n ? (n - below.n) / (above.n - below.n) : 0;
  const between = (from: number, to: number) => from ** (1 - share) * to ** share;
  return {
    alpha: between(below.alpha, above.alpha),
    alphaLow: between(below.alphaLow, above.alphaLow),
    alphaHigh: between(below.alphaHigh, above.alphaHigh),
  };
}
