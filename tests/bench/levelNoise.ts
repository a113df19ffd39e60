/** How much of one kind of flaw a stone has, as found and as true, and how much of it the limit lets pass. */
export interface FoundAmount {
  readonly found: number;
  readonly true: number;
  readonly limit: number;
}

/**
 * Standard deviation of the root of a stone's flaw level, in limits, once the share that is found is allowed for: what
 * the forecast takes for its noise. Read off the middle two thirds, so that single stones do not make it.
 */
export function levelNoise(stones: readonly FoundAmount[]): number {
  const sum = (pick: (one: FoundAmount) => number) => stones.reduce((total, one) => total + pick(one), 0);
  const share =
    sum((one) => one.found) /
    Math.max(
      1e-9,
      sum((one) => one.true),
    );
  const off = stones
    .filter((one) => one.true > 0)
    .map((one) => Math.sqrt(one.found / share / one.limit) - Math.sqrt(one.true / one.limit))
    .sort((a, b) => a - b);
  const at = (part: number) => off[Math.floor(part * (off.length - 1))] ?? 0;
  return (at(5 / 6) - at(1 / 6)) / 2 / 0.967;
}
