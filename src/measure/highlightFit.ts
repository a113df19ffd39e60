import { nthSmallest } from '../image/nthSmallest';
import type { HighlightWindow, LobeShape } from './highlightModel';
import { leastSquares } from './leastSquares';
import {
  amplitudeOf,
  blank,
  CHANGE_FROM,
  explain,
  type HighlightProblem,
  LOG_ALPHA,
  LOG_GAIN,
  PRIOR_COUNT,
  residualsOf,
  STEPS,
  toParameters,
  toShape,
} from './lobeResiduals';

export type { HighlightPrior, HighlightProblem } from './lobeResiduals';

/** A fitted highlight. */
export interface HighlightFit {
  readonly shape: LobeShape;
  readonly amplitude: number;
  /** The lobe as drawn in the window, share of the lamp's radiance, 0 to 1. */
  readonly lobe: Float64Array;
  /** The stone's own light in the window. */
  readonly body: Float64Array;
  /** Robust standard deviation of what the fit leaves over on the stone's own light. */
  readonly residualSd: number;
  /** Weight of each pixel in the last round, 0 to 1; low for outliers and where the lobe itself is uncertain. */
  readonly weights: Float64Array;
  /** Sum of squared weighted residuals over residualSd², priors included. */
  readonly cost: number;
}

/** How a fit is run. */
export interface FitEffort {
  /** Rounds of re-weighting, ≥ 1. */
  readonly rounds: number;
  readonly iterations: number;
  /** True to let the curvature change across the lobe. */
  readonly unevenCurvature: boolean;
}

/** Residuals beyond this many standard deviations count ever less (Cauchy weights). */
const OUTLIER_SDS = 2.5;
/** On the lobe itself outliers are let in further, share of its height, or a bent highlight would be cast out whole. */
const LOBE_OUTLIER = 0.3;
/** Error of the lobe itself, share of its height: uneven curvature, pits, the lamp's own evenness. */
const LOBE_ERROR = 0.03;
/** Noise that an 8-bit compressed photo has even where the stone is plain: share of the amplitude, and absolute. */
const NOISE_FLOOR = { share: 0.001, radiance: 0.0008 };
/** A search ends when a step gains no more than this share of the cost. */
const TOLERANCE = 3e-4;
const REFIT_ITERATIONS = 8;
/** Derivatives that are only corrected take more of them. */
const HELD_ITERATIONS = 12;
const AGAIN = { rounds: 3, iterations: 10 };

/**
 * Fits center, curvature, roughness and body of one highlight together.
 *
 * @param problem - Window, lamp and camera, and what is expected.
 * @param start - Where the search begins.
 * @param effort - How long to search.
 * @returns The fit.
 */
export function highlightFit(problem: HighlightProblem, start: LobeShape, effort: FitEffort): HighlightFit {
  let parameters = toParameters(start);
  let weights: Float64Array = Float64Array.from(problem.window.use, (use) => (use === 1 ? 1 : 0));
  let sd = 1;
  const explained = blank(problem);
  const steps = STEPS.map((step, i) => (i >= CHANGE_FROM && !effort.unevenCurvature ? 0 : step));
  for (let round = 0; round < effort.rounds; round++) {
    explain(problem, parameters, weights, explained);
    const { left, lobe } = explained;
    sd = Math.max(robustSd(left, problem.window.use), noiseFloor(problem.prior.amplitude));
    weights = pixelWeights(problem.window, left, sd, lobe, amplitudeOf(problem, parameters));
    parameters = minimize(problem, parameters, weights, sd, steps, effort.iterations);
  }
  return described(problem, parameters, weights, sd);
}

/** Where a row of fits of one highlight has come to, so that the next begins there; null before the first. */
export interface FitTrail {
  parameters: Float64Array | null;
}

/**
 * Fits again with the weights of an earlier fit, so that the costs of both can be compared.
 *
 * @param problem - As in the earlier fit, but for what is to be varied.
 * @param fit - The earlier fit; the search begins there.
 * @param heldAlpha - Roughness to hold, or null to fit it.
 */
export function refit(problem: HighlightProblem, fit: HighlightFit, heldAlpha: number | null): HighlightFit {
  const start = toParameters(heldAlpha === null ? fit.shape : { ...fit.shape, alpha: heldAlpha });
  start[LOG_GAIN] = heldAlpha === null ? 0 : Math.log(fit.amplitude / problem.prior.amplitude);
  const steps = stepsOf(fit, heldAlpha !== null);
  const parameters = minimize(problem, start, fit.weights, fit.residualSd, steps, REFIT_ITERATIONS);
  return described(problem, parameters, fit.weights, fit.residualSd);
}

/**
 * Cost of a fit that holds the roughness, with the weights of an earlier fit; one of a row of neighboring roughnesses.
 *
 * @param problem - As in the earlier fit, but for what is to be varied.
 * @param fit - The earlier fit; the first search of a row begins there.
 * @param heldAlpha - Roughness to hold.
 * @param trail - Of the row; the search begins where the one before ended.
 * @returns As `HighlightFit.cost`.
 */
export function costHeld(
  problem: HighlightProblem,
  fit: HighlightFit,
  heldAlpha: number,
  trail: FitTrail,
): number {
  const start = Float64Array.from(trail.parameters ?? toParameters(fit.shape));
  if (!trail.parameters) start[LOG_GAIN] = Math.log(fit.amplitude / problem.prior.amplitude);
  start[LOG_ALPHA] = Math.log(heldAlpha);
  const residuals = residualsOf(problem, fit.weights, fit.residualSd);
  const count = problem.window.values.length + PRIOR_COUNT;
  const { parameters, cost } = leastSquares(residuals, count, start, {
    steps: stepsOf(fit, true),
    maxIterations: HELD_ITERATIONS,
    tolerance: TOLERANCE,
    corrects: true,
  });
  trail.parameters = parameters;
  return cost;
}

function stepsOf({ shape }: HighlightFit, isAlphaHeld: boolean): number[] {
  const isEven = shape.change.every((value) => value === 0);
  return STEPS.map((step, i) =>
    (isAlphaHeld && i === LOG_ALPHA) || (isEven && i >= CHANGE_FROM) ? 0 : step,
  );
}

/**
 * Fits a highlight again when something else is known beforehand, such as another refractive index.
 *
 * @param problem - As in the earlier fit, but for what is known.
 * @param fit - The earlier fit; the search begins there.
 */
export function fitAgain(problem: HighlightProblem, { shape }: HighlightFit): HighlightFit {
  const unevenCurvature = shape.change.some((value) => value !== 0);
  return highlightFit(problem, shape, { ...AGAIN, unevenCurvature });
}

function minimize(
  problem: HighlightProblem,
  start: Float64Array,
  weights: Float64Array,
  sd: number,
  steps: readonly number[],
  maxIterations: number,
): Float64Array {
  const residuals = residualsOf(problem, weights, sd);
  const count = problem.window.values.length + PRIOR_COUNT;
  return leastSquares(residuals, count, start, { steps, maxIterations, tolerance: TOLERANCE }).parameters;
}

function noiseFloor(amplitude: number): number {
  return NOISE_FLOOR.share * Math.min(1, amplitude) + NOISE_FLOOR.radiance;
}

function robustSd(left: Float64Array, use: Uint8Array): number {
  const sizes = left.filter((_, i) => use[i] === 1).map(Math.abs);
  return 1.4826 * (nthSmallest(sizes, sizes.length >> 1) ?? 0);
}

function pixelWeights(
  window: HighlightWindow,
  left: Float64Array,
  sd: number,
  lobe: Float64Array,
  amplitude: number,
): Float64Array {
  return left.map((value, i) => {
    if (window.use[i] !== 1) return 0;
    const own = Math.hypot(sd, LOBE_ERROR * amplitude * lobe[i]!);
    const limit = OUTLIER_SDS * own + LOBE_OUTLIER * amplitude * lobe[i]!;
    return (sd / own) ** 2 / (1 + (value / limit) ** 2);
  });
}

function described(
  problem: HighlightProblem,
  parameters: Float64Array,
  weights: Float64Array,
  sd: number,
): HighlightFit {
  const explained = blank(problem);
  explain(problem, parameters, weights, explained);
  const { lobe, body } = explained;
  const residuals = new Float64Array(problem.window.values.length + PRIOR_COUNT);
  residualsOf(problem, weights, sd)(parameters, residuals, null);
  const cost = residuals.reduce((sum, r) => sum + r * r, 0);
  const amplitude = amplitudeOf(problem, parameters);
  return { shape: toShape(parameters), amplitude, lobe, body, residualSd: sd, weights, cost };
}
