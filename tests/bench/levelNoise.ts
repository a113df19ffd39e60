/** How much of one kind of flaw a stone has, as found and as true, and how much of it the limit lets pass. */
export interface FoundAmount {
  readonly found: number;
  readonly true: number;
  readonly limit: number;
}

/**
 * Standard deviation of the root of a stone's flaw level, in limits, once the share that is found is allowed for: what
 * one photo of each stone tells. Read off the middle two thirds, so that single stones do not make it.
 */
export function levelNoise(stones: readonly FoundAmount[]): number {
  const share = foundShare(stones);
  return middleSpread(stones.filter((one) => one.true > 0).map((one) => offBy(one, share)));
}

/** Noise of the root of a level, in limits, taken apart by photographing the same stones several times. */
export interface NoiseSplit {
  /** Standard deviation of what a stone keeps from check to check. */
  readonly kept: number;
  /** Standard deviation of what is new at each check. */
  readonly fresh: number;
  /** The same of what is new, read off the middle two thirds of the differences. */
  readonly freshMiddle: number;
  /** The same of the stones' means, less what is left in them of what is new, read off their middle two thirds. */
  readonly keptMiddle: number;
  readonly stones: number;
  readonly readings: number;
}

/**
 * Takes the noise of levels apart into what each stone keeps and what is new at each check (one-way random effects).
 *
 * @param stones - One list for each stone: what its checks found. Stones seen once, or without such flaws, are left out.
 * @see Searle, Casella and McCulloch 1992, Variance Components, section 3.6 (analysis of variance, unbalanced data);
 *   from memory.
 */
export function splitNoise(stones: readonly (readonly FoundAmount[])[]): NoiseSplit {
  const used = stones.filter((checks) => checks.length > 1 && checks[0]!.true > 0);
  const share = foundShare(used.flat());
  const offs = used.map((checks) => checks.map((one) => offBy(one, share)));
  const means = offs.map(mean);
  const readings = offs.flat().length;
  const within = offs.flatMap((own, i) => own.map((off) => (off - means[i]!) ** 2));
  const freshSquared = sum(within) / (readings - used.length);
  const all = mean(offs.flat());
  const between = sum(offs.map((own, i) => own.length * (means[i]! - all) ** 2)) / (used.length - 1);
  const usual = (readings - sum(offs.map(({ length }) => length ** 2)) / readings) / (used.length - 1);
  const differences = offs.flatMap((own) =>
    own.flatMap((a, i) => own.slice(i + 1).flatMap((b) => [a - b, b - a])),
  );
  const freshMiddle = middleSpread(differences) / Math.SQRT2;
  const root = (squared: number) => Math.sqrt(Math.max(0, squared));
  return {
    kept: root((between - freshSquared) / usual),
    fresh: Math.sqrt(freshSquared),
    freshMiddle,
    keptMiddle: root(middleSpread(means) ** 2 - freshMiddle ** 2 / usual),
    stones: used.length,
    readings,
  };
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const mean = (values: readonly number[]) => sum(values) / values.length;

/** Share of all true flaws that is found. */
export function foundShare(stones: readonly FoundAmount[]): number {
  return sum(stones.map(({ found }) => found)) / Math.max(1e-9, sum(stones.map((one) => one.true)));
}

/** How far the root of a level is off, in limits, when the share found is allowed for. */
export function offBy(one: FoundAmount, share: number): number {
  return Math.sqrt(one.found / share / one.limit) - Math.sqrt(one.true / one.limit);
}

/** Standard deviation of the normal distribution whose middle two thirds are as wide. */
function middleSpread(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (part: number) => sorted[Math.floor(part * (sorted.length - 1))] ?? 0;
  return (at(5 / 6) - at(1 / 6)) / 2 / 0.967;
}
