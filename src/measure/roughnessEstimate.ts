import { costHeld, type FitTrail, type HighlightFit, type HighlightProblem } from './highlightFit';
import type { HighlightWindow, LobeOptics } from './highlightModel';
import { lobeMisfit } from './lobeMisfit';

/** A roughness and its 90 % interval. */
export interface RoughnessEstimate {
  readonly alpha: number;
  readonly low: number;
  readonly high: number;
}

/** Distances from the best ln α that are tried, ln units, until the fit is this many standard deviations worse. */
const DISTANCES = [0.15, 0.3, 0.55, 0.9, 1.4, 2.1, 3];
const FAR_ENOUGH = 3;
/**
 * Before the photo is looked at, every ln α in this range is as likely as any other. The best hand polishes stay
 * above the lower end, 93 gloss units at 60° on quartz (from memory); a lobe rougher than the upper one shows nothing.
 */
export const ROUGHNESS_RANGE = { least: 0.004, most: 0.8 };
/** The interval goes no lower; nothing smoother looks any different. */
const LEAST_READ = 0.0015;
const GRID = 160;
/** Shares of the probability below the ends of the interval. */
const TAILS = [0.05, 0.95] as const;
/** Half of a 90 % interval of a normal distribution, standard deviations. */
const NORMAL_90 = 1.645;
/** What the model itself is wrong by: lobe shape, uneven curvature (from the development scenes), ln α. */
const MODEL_SD = 0.08;
/** A window always holds about so many independent residuals: slow ones are fitted away with the body. */
const FEWEST_INDEPENDENT = 20;
/** Spread of the measured camera blur, share of it; it enters where the edge of a near-mirror is read. */
const BLUR_SD = 0.25;

/**
 * Mean of ln α and a 90 % interval, from how much worse the fit becomes when the roughness is held elsewhere.
 *
 * Where the photo cannot tell a near-mirror from a mirror, the best fit often lies at the end of the range; the mean
 * over all that fit as well does not. Pixels of stone pattern hang together, so the cost is scaled to the number of
 * independent residuals.
 *
 * @param problem - What was fitted.
 * @param fit - The best fit.
 * @see Gelman et al., Bayesian Data Analysis, 3rd ed., section 2.4 (even prior on a logarithm).
 */
export function roughnessEstimate(problem: HighlightProblem, fit: HighlightFit): RoughnessEstimate {
  const ladder = costLadder(problem, fit);
  const step = Math.log(ROUGHNESS_RANGE.most / ROUGHNESS_RANGE.least) / GRID;
  const places = Array.from({ length: GRID + 1 }, (_, i) => Math.log(ROUGHNESS_RANGE.least) + i * step);
  const costs = places.map((place) => rootAt(ladder, place) ** 2);
  const least = Math.min(...costs);
  const likely = costs.map((cost) => Math.exp((least - cost) / 2));
  const total = likely.reduce((sum, value) => sum + value, 0);
  const mean = places.reduce((sum, place, i) => sum + (place * likely[i]!) / total, 0);
  const [low, high] = TAILS.map((share) => places[reaches(likely, share * total)] ?? mean) as [
    number,
    number,
  ];
  const model = Math.hypot(MODEL_SD, blurSd(problem.optics, fit), lobeMisfit({ problem, fit }));
  const widen = (end: number) => Math.hypot(end - mean, NORMAL_90 * model);
  return {
    alpha: Math.exp(mean),
    low: Math.max(LEAST_READ, Math.exp(mean - widen(low))),
    high: Math.min(1, Math.exp(mean + widen(high))),
  };
}

/** Index at which the running sum reaches a value. */
function reaches(values: readonly number[], sum: number): number {
  let below = 0;
  return values.findIndex((value) => {
    below += value;
    return below >= sum;
  });
}

interface Rung {
  readonly lnAlpha: number;
  /** Root of how much worse the fit is there than at its best: standard deviations. */
  readonly root: number;
}

/** Fits at ever larger distances on both sides of the best, ascending in ln α. */
function costLadder(problem: HighlightProblem, fit: HighlightFit): Rung[] {
  const independent = independentShare(problem.window, fit);
  const middle = Math.log(fit.shape.alpha);
  // The given fit need not have reached the lowest cost.
  let least = fit.cost;
  const side = (direction: 1 | -1) => {
    const tried: { lnAlpha: number; cost: number }[] = [];
    const trail: FitTrail = { parameters: null };
    for (const distance of DISTANCES) {
      const lnAlpha = middle + direction * distance;
      const cost = costHeld(problem, fit, Math.exp(lnAlpha), trail);
      least = Math.min(least, cost);
      tried.push({ lnAlpha, cost });
      const isOutside = lnAlpha < Math.log(ROUGHNESS_RANGE.least) || lnAlpha > Math.log(ROUGHNESS_RANGE.most);
      if (isOutside || (cost - least) * independent > FAR_ENOUGH ** 2) break;
    }
    return tried;
  };
  const below = side(-1).reverse();
  const tried = [...below, { lnAlpha: middle, cost: fit.cost }, ...side(1)];
  return tried.map(({ lnAlpha, cost }) => ({ lnAlpha, root: Math.sqrt((cost - least) * independent) }));
}

/** The root grows about evenly between two rungs, and beyond the last as between the last two. */
function rootAt(ladder: readonly Rung[], lnAlpha: number): number {
  const after = ladder.findIndex((rung) => rung.lnAlpha >= lnAlpha);
  const k = after < 0 ? ladder.length - 1 : Math.max(1, after);
  const [a, b] = [ladder[k - 1]!, ladder[k]!];
  return a.root + ((lnAlpha - a.lnAlpha) / (b.lnAlpha - a.lnAlpha)) * (b.root - a.root);
}

/** Error of ln α from the error of the blur: widths add in quadrature, α² + (blur · curvature)². */
function blurSd(optics: LobeOptics, fit: HighlightFit): number {
  const blurSlope = optics.blurPx * Math.exp(fit.shape.mean);
  return Math.min(1.5, (BLUR_SD * blurSlope * blurSlope) / (fit.shape.alpha * fit.shape.alpha));
}

/** Share of the residuals that are independent, from the correlation of neighbors; the body fitted away leaves a few at least. */
function independentShare(window: HighlightWindow, fit: HighlightFit): number {
  const left = window.values.map((value, i) => value - fit.body[i]! - fit.amplitude * fit.lobe[i]!);
  const share = (offset: number) => {
    let product = 0;
    let square = 0;
    for (let i = 0; i + offset < left.length; i++) {
      const w = fit.weights[i]! * fit.weights[i + offset]!;
      product += w * left[i]! * left[i + offset]!;
      square += (w * (left[i]! ** 2 + left[i + offset]! ** 2)) / 2;
    }
    const correlation = square > 0 ? Math.min(0.95, Math.max(0, product / square)) : 0;
    return (1 - correlation) / (1 + correlation);
  };
  const used = fit.weights.reduce((sum, weight) => sum + weight, 0);
  return Math.max(share(1) * share(window.width), Math.min(1, FEWEST_INDEPENDENT / Math.max(1, used)));
}
