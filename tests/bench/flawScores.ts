import type { KindMatch, StoneFlawMatch } from './flawMatch';
import { quantile } from './quantile';

export type FlawKindName = keyof StoneFlawMatch;

/** One stone's comparison, and whether it has no flaw at all. */
export interface ScoredStone {
  readonly match: StoneFlawMatch;
  readonly isSound: boolean;
}

/** Figures of one kind of flaw over many stones. */
export interface KindScore {
  readonly asked: number;
  readonly found: number;
  readonly recall: number;
  readonly precision: number;
  readonly inventedPerStone: number;
  /** Median of |claimed / true size − 1| over what was found; NaN when nothing was. */
  readonly sizeError: number;
}

/** Recall, precision and size error of one kind. */
export function kindScore(stones: readonly ScoredStone[], kind: FlawKindName): KindScore {
  const every = stones.map(({ match }): KindMatch => match[kind]);
  const sum = (count: (one: KindMatch) => number) => every.reduce((total, one) => total + count(one), 0);
  const found = sum(({ hits }) => hits.length);
  const asked = found + sum(({ missed }) => missed.length);
  const right = sum((one) => one.right);
  const invented = sum((one) => one.invented.length);
  const errors = every
    .flatMap(({ hits }) => hits)
    .map(({ truth, claim }) =>
      Math.abs((claim.diameterMm ?? claim.lengthMm ?? 0) / (truth.diameterMm ?? truth.lengthMm ?? 1) - 1),
    );
  return {
    asked,
    found,
    recall: found / Math.max(1, asked),
    precision: right / Math.max(1, right + invented),
    inventedPerStone: invented / Math.max(1, stones.length),
    sizeError: errors.length > 0 ? quantile(errors, 0.5) : Number.NaN,
  };
}

/** Flaws of any kind invented on stones that have none, per such stone. */
export function inventedOnSound(stones: readonly ScoredStone[]): { stones: number; perStone: number } {
  const sound = stones.filter(({ isSound }) => isSound);
  const invented = sound.reduce(
    (sum, { match }) =>
      sum + match.pit.invented.length + match.fracture.invented.length + match.chip.invented.length,
    0,
  );
  return { stones: sound.length, perStone: invented / Math.max(1, sound.length) };
}
