import { type LevelNoise, lnLikelihood } from '../../src/grading/levelNoise';
import { CHECKS, drawLaws, type World } from './grindHistories';

/** What a forecast says, before it is decided whether the stone will clear. */
export interface Guess {
  readonly neverOdds: number;
  /** Checks left, 10th, 50th and 90th percentile, if it clears. */
  readonly left: readonly [number, number, number];
}

const LAWS = 20000;
const SEED = 990;
const STEP = 0.05;
const FARTHEST = 80;

/**
 * The forecast that nothing can beat on average: Bayes with the very distribution that the histories are drawn from,
 * as 20000 laws drawn from it with another seed.
 */
export function idealForecast(noise: LevelNoise, world: World) {
  const laws = drawLaws(LAWS, SEED, world);
  const roots = Float64Array.from(laws.flatMap(({ truth }) => truth.map(Math.sqrt)));
  const logs = new Float64Array(LAWS);
  return (levels: readonly number[]): Guess => {
    const seen = levels.map(Math.sqrt);
    const offs = new Float64Array(seen.length);
    let best = Number.NEGATIVE_INFINITY;
    for (let k = 0; k < LAWS; k++) {
      for (let t = 0; t < offs.length; t++) offs[t] = seen[t]! - roots[k * CHECKS + t]!;
      logs[k] = lnLikelihood(offs, noise);
      best = Math.max(best, logs[k]!);
    }
    const clearing = new Float64Array(FARTHEST / STEP + 1);
    let [total, never] = [0, 0];
    laws.forEach(({ clearsAt }, k) => {
      const weight = Math.exp(logs[k]! - best);
      total += weight;
      if (clearsAt === null) never += weight;
      else clearing[Math.min(clearing.length - 1, Math.round(clearsAt / STEP))]! += weight;
    });
    const at = (share: number) =>
      Math.max(0, placeOf(clearing, share * (total - never)) * STEP - levels.length + 1);
    return { neverOdds: never / total, left: [at(0.1), at(0.5), at(0.9)] };
  };
}

/** First index up to which the weights add up to `sought`. */
function placeOf(weights: Float64Array, sought: number): number {
  let sum = 0;
  const place = weights.findIndex((weight) => {
    sum += weight;
    return sum >= sought;
  });
  return place < 0 ? weights.length - 1 : place;
}
