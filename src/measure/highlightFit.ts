import { bodyFit } from './bodyFit';
import {
  type HighlightWindow,
  type LobeOptics,
  type LobeShape,
  lobePicture,
  turningAway,
} from './highlightModel';
import { leastSquares, type Residuals } from './leastSquares';

/** What is known about a highlight before it is fitted. */
export interface HighlightPrior {
  /** Radiance of a perfect polish of the assumed index there. */
  readonly amplitude: number;
  /** Standard deviation of the amplitude's logarithm. */
  readonly amplitudeSd: number;
  /** Natural logarithm of the expected curvature, slope per photo pixel, and its standard deviation. */
  readonly curvatureMean: number;
  readonly curvatureSd: number;
  /** Radiance that the stone itself has at least under the highlight. */
  readonly leastBody: number;
}

/** One highlight to be fitted. */
export interface HighlightProblem {
  readonly window: HighlightWindow;
  readonly optics: LobeOptics;
  readonly prior: HighlightPrior;
}

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

/** Steps of the numeric derivatives: row, column, mean, stretch, skew, ln α, ln gain, four changes of curvature. */
const STEPS = [0.05, 0.05, 0.02, 0.02, 0.02, 0.02, 0.01, 0.01, 0.01, 0.01, 0.01];
/** As many steps are held at zero when the curvature is taken to be even. */
const CHANGE_FROM = 7;
/** Spread of the changes of curvature, slope in lamp radii one lamp radius away from the center. */
const CHANGE_SD = 0.3;
const LOG_ALPHA = 5;
const LOG_GAIN = 6;
const ALPHA_BOUNDS = [0.0015, 0.8] as const;
/** Spread of the stretch and skew of the curvature's logarithm; a stone twice as long as wide has about 0.5. */
const STRETCH_SD = 0.5;
/** Residuals beyond this many standard deviations count ever less (Cauchy weights). */
const OUTLIER_SDS = 2.5;
/** On the lobe itself outliers are let in further, share of its height, or a bent highlight would be cast out whole. */
const LOBE_OUTLIER = 0.3;
/** Error of the lobe itself, share of its height: uneven curvature, pits, the lamp's own evenness. */
const LOBE_ERROR = 0.03;
/** Noise that an 8-bit compressed photo has even where the stone is plain: share of the amplitude, and absolute. */
const NOISE_FLOOR = { share: 0.001, radiance: 0.0008 };
/** Spread allowed below the least body, radiance. */
const LEAST_BODY_SD = 0.005;
/** Hold on the body's bowl, share of the window's pixels. */
const BOWL_RIDGE = 0.5;
/** Neighboring pixels err together, so what is known beforehand counts as much as this many of them would, squared. */
const PRIOR_WEIGHT = 3;
const PRIOR_COUNT = 11;
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

/**
 * Fits again with the weights of an earlier fit, so that the costs of both can be compared.
 *
 * @param problem - As in the earlier fit, but for what is to be varied.
 * @param fit - The earlier fit; the search begins there.
 * @param heldAlpha - Roughness to hold, or null to fit it.
 */
export function refit(problem: HighlightProblem, fit: HighlightFit, heldAlpha: number | null): HighlightFit {
  const start = toParameters(heldAlpha === null ? fit.shape : { ...fit.shape, alpha: heldAlpha });
  start[LOG_GAIN] = Math.log(fit.amplitude / problem.prior.amplitude);
  if (heldAlpha === null) start[LOG_GAIN] = 0;
  const even = fit.shape.change.every((value) => value === 0);
  const steps = STEPS.map((step, i) =>
    (heldAlpha !== null && i === LOG_ALPHA) || (even && i >= CHANGE_FROM) ? 0 : step,
  );
  const parameters = minimize(problem, start, fit.weights, fit.residualSd, steps, 8);
  return described(problem, parameters, fit.weights, fit.residualSd);
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
  return leastSquares(residuals, count, start, { steps, maxIterations, tolerance: 3e-4 }).parameters;
}

function toParameters(shape: LobeShape): Float64Array {
  const { row, column, mean, stretch, skew, alpha, change } = shape;
  return Float64Array.of(row, column, mean, stretch, skew, Math.log(alpha), 0, ...change);
}

function toShape(p: Float64Array): LobeShape {
  const alpha = Math.min(ALPHA_BOUNDS[1], Math.max(ALPHA_BOUNDS[0], Math.exp(p[LOG_ALPHA]!)));
  return {
    row: p[0]!,
    column: p[1]!,
    mean: p[2]!,
    stretch: p[3]!,
    skew: p[4]!,
    alpha,
    change: [p[7]!, p[8]!, p[9]!, p[10]!],
  };
}

function noiseFloor(amplitude: number): number {
  return NOISE_FLOOR.share * Math.min(1, amplitude) + NOISE_FLOOR.radiance;
}

/** What a set of parameters makes of a window. */
interface Explained {
  readonly lobe: Float64Array;
  readonly dimming: Float64Array;
  readonly body: Float64Array;
  /** What lobe and body leave over. */
  readonly left: Float64Array;
}

function blank({ window }: HighlightProblem): Explained {
  const plane = () => new Float64Array(window.values.length);
  return { lobe: plane(), dimming: plane(), body: plane(), left: plane() };
}

const amplitudeOf = ({ prior }: HighlightProblem, p: Float64Array) =>
  prior.amplitude * Math.exp(p[LOG_GAIN]!);

/** Lobe, body and what both leave over, for one set of parameters. */
function explain(problem: HighlightProblem, p: Float64Array, weights: Float64Array, into: Explained): void {
  const shape = toShape(p);
  lobePicture(problem.window, shape, problem.optics, into.lobe);
  turningAway(problem.window, shape, into.dimming);
  explainRest(problem, p, weights, into);
}

/** The same for a lobe and dimming at hand. */
function explainRest(
  problem: HighlightProblem,
  p: Float64Array,
  weights: Float64Array,
  { lobe, dimming, body, left }: Explained,
): void {
  const { values, use, width } = problem.window;
  const amplitude = amplitudeOf(problem, p);
  const n = values.length;
  for (let i = 0; i < n; i++) left[i] = values[i]! - amplitude * lobe[i]!;
  bodyFit(left, weights, dimming, width, BOWL_RIDGE * n, body);
  for (let i = 0; i < n; i++) {
    const difference = left[i]! - body[i]!;
    left[i] = use[i] === 2 ? Math.max(0, difference) : difference;
  }
}

/** Residuals as `leastSquares` asks for them. */
function residualsOf(problem: HighlightProblem, weights: Float64Array, sd: number): Residuals {
  const { use } = problem.window;
  const roots = weights.map((weight, i) => Math.sqrt(use[i] === 2 ? 1 : weight) / sd);
  const whole = blank(problem);
  const scratch = blank(problem);
  const { window, optics } = problem;
  return (p, into, moved) => {
    let explained = moved === null ? whole : scratch;
    if (moved === LOG_GAIN) {
      explained = { ...scratch, lobe: whole.lobe, dimming: whole.dimming };
      explainRest(problem, p, weights, explained);
    } else if (moved !== null && moved >= LOG_ALPHA) {
      explained = { ...scratch, dimming: whole.dimming };
      lobePicture(window, toShape(p), optics, scratch.lobe);
      explainRest(problem, p, weights, explained);
    } else explain(problem, p, weights, explained);
    const { left } = explained;
    for (let i = 0; i < left.length; i++) into[i] = roots[i]! * left[i]!;
    priorResiduals(problem, p, explained.body, into);
  };
}

function priorResiduals(
  { window, prior }: HighlightProblem,
  p: Float64Array,
  body: Float64Array,
  into: Float64Array,
): void {
  const n = window.values.length;
  const row = Math.min(window.height - 1, Math.max(0, Math.round(p[0]!)));
  const column = Math.min(window.width - 1, Math.max(0, Math.round(p[1]!)));
  const missing = prior.leastBody - body[row * window.width + column]!;
  into[n] = (p[2]! - prior.curvatureMean) / prior.curvatureSd;
  into[n + 1] = p[3]! / STRETCH_SD;
  into[n + 2] = p[4]! / STRETCH_SD;
  into[n + 3] = (PRIOR_WEIGHT * p[LOG_GAIN]!) / prior.amplitudeSd;
  into[n + 4] = 20 * Math.max(0, p[LOG_ALPHA]! - Math.log(ALPHA_BOUNDS[1]));
  into[n + 5] = 20 * Math.max(0, Math.log(ALPHA_BOUNDS[0]) - p[LOG_ALPHA]!);
  into[n + 6] = Math.max(0, missing) / LEAST_BODY_SD;
  for (let k = 0; k < 4; k++) into[n + 7 + k] = p[CHANGE_FROM + k]! / CHANGE_SD;
}

function robustSd(left: Float64Array, use: Uint8Array): number {
  const sizes = left
    .filter((_, i) => use[i] === 1)
    .map(Math.abs)
    .sort();
  return sizes.length === 0 ? 0 : 1.4826 * sizes[sizes.length >> 1]!;
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
