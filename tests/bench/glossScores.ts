import type { GlossRow } from './glossRow';
import { quantile } from './quantile';
import { rankCorrelation } from './rankCorrelation';

/** Roughness within which the targets hold. */
export const SCORED_ALPHA = { least: 0.01, most: 0.25 };
/** An estimate is badly off from this factor on, up or down. */
export const BADLY_OFF = 2;

/** How well a set of stones was read. Shares are 0 to 1; NaN where no stone tells. */
export interface GlossScores {
  readonly stones: number;
  readonly withNumber: number;
  readonly noAnswerShare: number;
  /** Of |ln(estimate / truth)|. */
  readonly medianError: number;
  readonly error90: number;
  /** Of ln(estimate / truth): how far estimates lean to rougher. */
  readonly medianLean: number;
  /** Share of the 90 % intervals that hold the truth. */
  readonly coverage: number;
  /** Of the distance in 60° gloss units, the material known or not. */
  readonly gu60: { readonly median: number; readonly at90: number };
  readonly gu60Unknown: { readonly median: number; readonly at90: number };
  /** Share of the 60° gloss intervals of an unknown material that hold the truth. */
  readonly unknownCoverage: number;
}

/** Stones a fair photo can tell something about: their outline was found and no neighbor hides their highlight. */
export function readable(rows: readonly GlossRow[]): GlossRow[] {
  return rows.filter(({ isFound, isHighlightSeen }) => isFound && isHighlightSeen);
}

/** Readable stones within the roughness that the targets hold for. */
export function scored(rows: readonly GlossRow[]): GlossRow[] {
  return readable(rows).filter(({ alpha }) => alpha >= SCORED_ALPHA.least && alpha <= SCORED_ALPHA.most);
}

/** ln(estimate / truth) of the roughness; null without a number. */
export function logError({ reading, alpha }: Pick<GlossRow, 'reading' | 'alpha'>): number | null {
  return reading && Math.log(reading.alpha / alpha);
}

/** Scores of a set of stones, all of them counted. */
export function glossScores(rows: readonly GlossRow[]): GlossScores {
  const read = rows.flatMap((row) => (row.reading ? [{ row, reading: row.reading }] : []));
  const errors = read.map(({ row, reading }) => Math.log(reading.alpha / row.alpha));
  const sizes = errors.map(Math.abs);
  const known = read.map(({ row, reading }) => Math.abs(reading.gu60 - row.gu60));
  const unknown = read.map(({ row, reading }) => Math.abs(reading.gu60Unknown - row.gu60));
  return {
    stones: rows.length,
    withNumber: read.length,
    noAnswerShare: 1 - read.length / rows.length,
    medianError: quantile(sizes, 0.5),
    error90: quantile(sizes, 0.9),
    medianLean: quantile(errors, 0.5),
    coverage: shareOf(read, ({ row, reading }) => isWithin(row.alpha, reading.alphaLow, reading.alphaHigh)),
    gu60: { median: quantile(known, 0.5), at90: quantile(known, 0.9) },
    gu60Unknown: { median: quantile(unknown, 0.5), at90: quantile(unknown, 0.9) },
    unknownCoverage: shareOf(read, ({ row, reading }) =>
      isWithin(row.gu60, reading.gu60UnknownLow, reading.gu60UnknownHigh),
    ),
  };
}

/** Spearman's correlation of estimated and true roughness. */
export interface GlossRanks {
  /** Stones without a number left out. */
  readonly leftOut: number;
  /** Stones without a number behind all others, in the order of what they are at least: on them no highlight stands out. */
  readonly putLast: number;
}

export function glossRanks(rows: readonly GlossRow[]): GlossRanks {
  const withNumber = rows.filter(({ reading }) => reading);
  const spearman = (some: readonly GlossRow[]) =>
    rankCorrelation(
      some.map(placeInOrder),
      some.map(({ alpha }) => alpha),
    );
  return { leftOut: spearman(withNumber), putLast: spearman(rows) };
}

/** Behind any roughness. */
const LAST = 10;

/** Where a reader who sorts stones from glossy to matte puts one, by roughness. */
export function placeInOrder({ reading, alphaAtLeast }: Pick<GlossRow, 'reading' | 'alphaAtLeast'>): number {
  return reading?.alpha ?? LAST + (alphaAtLeast ?? 0);
}

/** Stones whose estimate is badly off though no warning stands beside it. */
export function badlyOffUnwarned(rows: readonly GlossRow[]): GlossRow[] {
  return rows.filter((row) => {
    const error = logError(row);
    return error !== null && Math.abs(error) > Math.log(BADLY_OFF) && row.warnings.length === 0;
  });
}

function isWithin(value: number, low: number, high: number): boolean {
  return low <= value && value <= high;
}

/** Share of the items for which something holds; NaN without items. */
export function shareOf<T>(items: readonly T[], holds: (item: T) => boolean): number {
  return items.filter(holds).length / items.length;
}
