/** When a stone's flaws will be within the limit. Times are counted in checks from the last one on. */
export interface Forecast {
  /** Middle of the further checks it will take if it clears; null when it will hardly clear. */
  readonly checks: number | null;
  /** Ends of the 80 % interval, if it clears; null when it will hardly clear. */
  readonly interval: readonly [low: number, high: number] | null;
  /** How likely the flaws stay above the limit whatever is ground, 0 to 1. */
  readonly neverOdds: number;
  /** Level that the flaws end at, as a share of the limit: the middle of what fits. */
  readonly floor: number;
}

/**
 * The grinding law: each check takes the same share of what can be ground away, and leaves a floor that cannot,
 *
 *     level(t) = floor + (start − floor) · exp(−t / τ),
 *
 * t in checks. Pits grind out, open fractures and deep pockets stay (common practice); that the share is the same at
 * every check is our assumption. It does not hold when a fracture opens or grit is changed.
 *
 * How likely each value is beforehand is our assumption too: τ half to a dozen checks, a floor below the limit on
 * about three stones of four.
 */
const TAUS = ladder(0.7, 14, 22);
const STARTS = ladder(0.4, 40, 40);
const FLOORS = [0, 0.15, 0.3, 0.45, 0.6, 0.75, 0.9, 1.1, 1.3, 1.6, 2, 2.5, 3.2, 4, 5] as const;
/** How many of the floors are below the limit, and how many are not. */
const CLEARING = FLOORS.filter((floor) => floor < 1).length;
const STAYING = FLOORS.length - CLEARING;
const TAU_MIDDLE = 3;
const TAU_LN_SPREAD = 0.6;
const CLEARS_BEFOREHAND = 0.75;

/** Standard deviation of the root of a level in limits from check to check, by kind of flaw; from `npm run bench:flaws` on the development trays. */
export const LEVEL_NOISE = { pit: 0.77, fracture: 0.17 } as const;
/** Odds from which it is said that a stone will not clear: wrong once in twenty then (`npm run bench:forecast`). */
export const WILL_NOT_CLEAR = 0.7;
/** Laws less likely than the best by this, ln, are left out. */
const FAINTEST = 14;
/** Looked ahead so far, checks. */
const FARTHEST = 60;

function ladder(from: number, to: number, count: number): number[] {
  return Array.from({ length: count }, (_, k) => from * (to / from) ** (k / (count - 1)));
}

/**
 * Says when a stone will be within the limit, by weighing all grinding laws against its checks (Bayes).
 *
 * @param levels - Flaw level at each check, oldest first, as shares of the limit, ≥ 0; at least one.
 * @param noise - Standard deviation of the root of a level, > 0.
 * @returns Null for no levels.
 */
export function forecast(levels: readonly number[], noise: number): Forecast | null {
  if (levels.length === 0) return null;
  const laws = weighed(levels, noise);
  const total = laws.reduce((sum, { weight }) => sum + weight, 0);
  const never = laws.filter(({ clearsAt }) => clearsAt === null);
  const neverOdds = never.reduce((sum, { weight }) => sum + weight, 0) / total;
  const clearing = laws.filter((law): law is Law & { clearsAt: number } => law.clearsAt !== null);
  const wait = (share: number) =>
    Math.max(0, quantileOf(clearing, share, (law) => law.clearsAt) - (levels.length - 1));
  return {
    checks: neverOdds >= WILL_NOT_CLEAR ? null : Math.min(FARTHEST, wait(0.5)),
    interval:
      neverOdds >= WILL_NOT_CLEAR ? null : [Math.min(FARTHEST, wait(0.1)), Math.min(FARTHEST, wait(0.9))],
    neverOdds,
    floor: quantileOf(laws, 0.5, (law) => law.floor),
  };
}

interface Law {
  readonly floor: number;
  /** Checks after the first at which the level is within the limit; null when it never is. */
  readonly clearsAt: number | null;
  readonly weight: number;
}

function weighed(levels: readonly number[], noise: number): Law[] {
  const roots = levels.map(Math.sqrt);
  let best = Number.NEGATIVE_INFINITY;
  const raw: (Omit<Law, 'weight'> & { log: number })[] = [];
  for (const tau of TAUS) {
    const decay = levels.map((_, t) => Math.exp(-t / tau));
    const priorTau = -((Math.log(tau / TAU_MIDDLE) / TAU_LN_SPREAD) ** 2) / 2;
    for (const floor of FLOORS) {
      const priorFloor = Math.log(
        floor < 1 ? CLEARS_BEFOREHAND / CLEARING : (1 - CLEARS_BEFOREHAND) / STAYING,
      );
      for (const start of STARTS) {
        if (start < floor) continue;
        const left = roots.reduce(
          (sum, root, t) => sum + (root - Math.sqrt(floor + (start - floor) * decay[t]!)) ** 2,
          0,
        );
        const log = priorTau + priorFloor - left / (2 * noise ** 2);
        const clearsAt = start <= 1 ? 0 : floor < 1 ? tau * Math.log((start - floor) / (1 - floor)) : null;
        raw.push({ floor, clearsAt, log });
        best = Math.max(best, log);
      }
    }
  }
  return raw
    .filter(({ log }) => log > best - FAINTEST)
    .map(({ log, ...law }) => ({ ...law, weight: Math.exp(log - best) }));
}

function quantileOf<T extends Law>(laws: readonly T[], share: number, value: (law: T) => number): number {
  const sorted = laws.map((law) => ({ at: value(law), weight: law.weight })).sort((a, b) => a.at - b.at);
  const total = sorted.reduce((sum, { weight }) => sum + weight, 0);
  let below = 0;
  for (const { at, weight } of sorted) {
    below += weight;
    if (below >= share * total) return at;
  }
  return sorted.at(-1)?.at ?? FARTHEST;
}
