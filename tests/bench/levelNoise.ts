import { DEFAULT_LIMITS } from '../../src/grading/limits';

/** Pits on a stone as counted and as true, and the surface looked at. */
export interface CountedPits {
  readonly counted: number;
  readonly true: number;
  readonly surfaceCm2: number;
}

/**
 * Standard deviation of the root of a stone's pit level, in limits, once the share that is found is allowed for: what
 * the forecast takes for its noise. Read off the middle two thirds, so that single stones do not make it.
 */
export function levelNoise(stones: readonly CountedPits[]): number {
  const sum = (pick: (one: CountedPits) => number) => stones.reduce((total, one) => total + pick(one), 0);
  const found =
    sum((one) => one.counted) /
    Math.max(
      1,
      sum((one) => one.true),
    );
  const level = (pits: number, { surfaceCm2 }: CountedPits) =>
    Math.sqrt(pits / surfaceCm2 / DEFAULT_LIMITS.coarse.maxPitsPerCm2);
  const off = stones
    .filter((one) => one.true > 0)
    .map((one) => level(one.counted / found, one) - level(one.true, one))
    .sort((a, b) => a - b);
  const at = (share: number) => off[Math.floor(share * (off.length - 1))] ?? 0;
  return (at(5 / 6) - at(1 / 6)) / 2 / 0.967;
}
