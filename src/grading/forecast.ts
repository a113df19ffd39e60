import { type LevelNoise, lnLikelihood } from './levelNoise';

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
 * By kind of flaw, for series in which the same surface is seen at every check: one face, always the same, or both added
 * up. When now one face is up, now the other, the difference between them comes on top and no forecast is worth having.
 * Most likely values from `npm run bench:repeat` on its development trays (23 and 25 stones).
 */
export const LEVEL_NOISE = {
  pit: { kept: 0.48, fresh: 0.25 },
  fracture: { kept: 0.21, fresh: 0.074 },
} as const satisfies Record<string, LevelNoise>;
/** Odds from which it is said that a stone will not clear: right nineteen times in twenty then, chosen on seed 1 of `npm run bench:forecast`. */
export const WILL_NOT_CLEAR = 0.8;

/**
 * The grinding law: each check takes the same share of what can be ground away, and leaves a floor that cannot,
 *
 *     level(t) = floor + (start − floor) · exp(−t / τ),
 *
 * t in checks. Pits grind out, open fractures and deep pockets stay (common practice); that the share is the same at
 * every check is our assumption. It does not hold when a fracture opens or grit is changed.
 *
 * How likely each value is beforehand is our assumption too: ln τ and ln start normal about the middles below, a floor
 * below the limit on three stones of four, evenly in each part. A stone that starts below its floor is at its floor.
 * Floors within a tenth of the limit are left out: no series of photographs tells on which side of it they lie.
 */
const TAU = { middle: 3, lnSpread: 0.5 } as const;
const START = { middle: 5, lnSpread: 0.6 } as const;
const CLEARS_BEFOREHAND = 0.75;
const UNDECIDED = 0.1;
const HIGH_FLOOR = 4.2;
const HIGHEST_FLOOR = 12;
/** Share of the floors above the limit that are higher than most. */
const VERY_HIGH = 0.1;

/** Grid the laws are weighed on. Starts lie about the first reading, within so many of its standard deviations. */
const LEAST_START = 0.05;
const TAUS = ladder(0.7, 13, 18);
const TAU_ODDS = normalized(TAUS.map((tau) => lnNormal(tau, TAU)));
const FLOORS = [
  ...cells(0, 1 - UNDECIDED, 10, CLEARS_BEFOREHAND),
  ...cells(1 + UNDECIDED, HIGH_FLOOR, 12, (1 - CLEARS_BEFOREHAND) * (1 - VERY_HIGH)),
  ...cells(HIGH_FLOOR, HIGHEST_FLOOR, 5, (1 - CLEARS_BEFOREHAND) * VERY_HIGH),
];
const STARTS_BELOW = FLOORS.map(({ middle }) => startsBelow(middle));
const START_STEPS = 11;
const START_REACH = 3.5;
/** Laws less likely than the best by this, ln, are left out. */
const FAINTEST = 16;
/** Looked ahead so far, checks, in steps of this. */
const FARTHEST = 60;
const STEP = 0.05;

/**
 * Says when a stone will be within the limit, by weighing all grinding laws against its checks (Bayes).
 *
 * What a stone keeps of the noise is integrated out: it shifts all roots alike, so a level that stopped close above the
 * limit stays undecided however often it is looked at.
 *
 * @param levels - Flaw level at each check, oldest first, as shares of the limit, ≥ 0; at least one.
 * @param noise - Of the root of a level.
 * @returns Null for no levels.
 */
export function forecast(levels: readonly number[], noise: LevelNoise): Forecast | null {
  if (levels.length === 0) return null;
  const laws = lawsFor(levels.map(Math.sqrt), noise);
  const best = laws.reduce((most, { log }) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  const passed = levels.length - 1;
  const clearing = new Float64Array(Math.ceil((FARTHEST + passed) / STEP) + 1);
  const floors = new Float64Array(FLOORS.length);
  let never = 0;
  for (const { cell, clearsAt, log } of laws) {
    if (log < best - FAINTEST) continue;
    const weight = Math.exp(log - best);
    floors[cell]! += weight;
    if (clearsAt === null) never += weight;
    else clearing[Math.min(clearing.length - 1, Math.round(clearsAt / STEP))]! += weight;
  }
  const total = floors.reduce((sum, weight) => sum + weight, 0);
  const wait = (share: number) =>
    Math.min(FARTHEST, Math.max(0, placeOf(clearing, share * (total - never)) * STEP - passed));
  const neverOdds = Math.min(1, never / total);
  const isHopeless = neverOdds >= WILL_NOT_CLEAR;
  return {
    checks: isHopeless ? null : wait(0.5),
    interval: isHopeless ? null : [wait(0.1), wait(0.9)],
    neverOdds,
    floor: FLOORS[placeOf(floors, total / 2)]!.middle,
  };
}

interface Law {
  /** Index of its floor. */
  readonly cell: number;
  /** Checks after the first at which the level is within the limit; null when it never is. */
  readonly clearsAt: number | null;
  /** Logarithm of how likely it is, up to a constant. */
  readonly log: number;
}

function lawsFor(roots: readonly number[], noise: LevelNoise): Law[] {
  const decays = TAUS.map((tau) => roots.map((_, t) => Math.exp(-t / tau)));
  const starts = startsAbout(Math.max(...roots.slice(0, 2)), Math.hypot(noise.kept, 2 * noise.fresh));
  const offs = new Float64Array(roots.length);
  const likelihood = (floor: number, above: number, decay: readonly number[]) => {
    for (let t = 0; t < offs.length; t++) offs[t] = roots[t]! - Math.sqrt(floor + above * decay[t]!);
    return lnLikelihood(offs, noise);
  };
  const laws: Law[] = [];
  FLOORS.forEach(({ middle: floor, odds }, cell) => {
    const stays = floor >= 1;
    // Nothing to grind away from the beginning: τ does not matter.
    const flat = Math.log(odds * STARTS_BELOW[cell]!) + likelihood(floor, 0, decays[0]!);
    laws.push({ cell, clearsAt: stays ? null : 0, log: flat });
    for (const { start, odds: startOdds } of starts) {
      if (start <= floor) continue;
      const checksPerTau = start <= 1 ? 0 : Math.log((start - floor) / (1 - floor));
      TAUS.forEach((tau, k) => {
        const log = Math.log(odds * startOdds * TAU_ODDS[k]!) + likelihood(floor, start - floor, decays[k]!);
        laws.push({ cell, clearsAt: stays ? null : tau * checksPerTau, log });
      });
    }
  });
  return laws;
}

/** Starts whose roots lie evenly about the first reading's, or the second's where the first missed what that saw; with the odds of each beforehand. */
function startsAbout(root: number, sd: number): { start: number; odds: number }[] {
  const low = Math.max(Math.sqrt(LEAST_START), root - START_REACH * sd);
  const step = (Math.max(low, root) + START_REACH * sd - low) / (START_STEPS - 1);
  return Array.from({ length: START_STEPS }, (_, k) => {
    const at = low + k * step;
    // d ln start = 2 d root / root.
    return { start: at ** 2, odds: (lnNormal(at ** 2, START) * 2 * step) / at };
  });
}

/** Density over ln value of a log-normal distribution. */
function lnNormal(value: number, { middle, lnSpread }: { middle: number; lnSpread: number }): number {
  const z = Math.log(value / middle) / lnSpread;
  return Math.exp((-z * z) / 2) / (lnSpread * Math.sqrt(2 * Math.PI));
}

/** Odds beforehand that a start drawn regardless of the floor lies below it, summed in steps of a hundredth of ln start. */
function startsBelow(floor: number): number {
  let sum = 0;
  for (let ln = Math.log(floor); ln > Math.log(LEAST_START); ln -= 0.01) {
    sum += 0.01 * lnNormal(Math.exp(ln), START);
  }
  return Math.max(sum, 1e-9);
}

/** First index up to which the weights add up to `sought`. */
function placeOf(weights: Float64Array, sought: number): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i++) {
    sum += weights[i]!;
    if (sum > 0 && sum >= sought) return i;
  }
  return weights.length - 1;
}

function normalized(odds: readonly number[]): number[] {
  const total = odds.reduce((sum, one) => sum + one, 0);
  return odds.map((one) => one / total);
}

function ladder(from: number, to: number, count: number): number[] {
  return Array.from({ length: count }, (_, k) => from * (to / from) ** (k / (count - 1)));
}

interface FloorCell {
  readonly middle: number;
  /** Odds beforehand that the floor lies in the cell. */
  readonly odds: number;
}

function cells(from: number, to: number, count: number, odds: number): FloorCell[] {
  const width = (to - from) / count;
  return Array.from({ length: count }, (_, k) => ({ middle: from + (k + 0.5) * width, odds: odds / count }));
}
