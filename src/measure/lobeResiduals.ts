import { type BodyTerms, bodyFit, bodyTerms } from './bodyFit';
import {
  type HighlightWindow,
  type LobeOptics,
  type LobeShape,
  lobePicture,
  turningAway,
} from './highlightModel';
import type { Residuals } from './leastSquares';

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

/** Steps of the numeric derivatives: row, column, mean, stretch, skew, ln α, ln gain, four changes of curvature. */
export const STEPS = [0.05, 0.05, 0.02, 0.02, 0.02, 0.02, 0.01, 0.01, 0.01, 0.01, 0.01];
/** As many steps are held at zero when the curvature is taken to be even. */
export const CHANGE_FROM = 7;
/** Spread of the changes of curvature, slope in lamp radii one lamp radius away from the center. */
const CHANGE_SD = 0.3;
export const LOG_ALPHA = 5;
export const LOG_GAIN = 6;
const ALPHA_BOUNDS = [0.0015, 0.8] as const;
/** Spread of the stretch and skew of the curvature's logarithm; a stone twice as long as wide has about 0.5. */
const STRETCH_SD = 0.5;
/** Spread allowed below the least body, radiance. */
const LEAST_BODY_SD = 0.005;
/** Hold on the body's bowl, share of the window's pixels. */
const BOWL_RIDGE = 0.5;
/** Neighboring pixels err together, so what is known beforehand counts as much as this many of them would, squared. */
const PRIOR_WEIGHT = 3;
/** What is known beforehand adds so many residuals. */
export const PRIOR_COUNT = 11;

export function toParameters(shape: LobeShape): Float64Array {
  const { row, column, mean, stretch, skew, alpha, change } = shape;
  return Float64Array.of(row, column, mean, stretch, skew, Math.log(alpha), 0, ...change);
}

export function toShape(p: Float64Array): LobeShape {
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

/** What a set of parameters makes of a window. */
export interface Explained {
  readonly lobe: Float64Array;
  readonly dimming: Float64Array;
  readonly body: Float64Array;
  /** What lobe and body leave over. */
  readonly left: Float64Array;
}

export function blank({ window }: HighlightProblem): Explained {
  const plane = () => new Float64Array(window.values.length);
  return { lobe: plane(), dimming: plane(), body: plane(), left: plane() };
}

export const amplitudeOf = ({ prior }: HighlightProblem, p: Float64Array) =>
  prior.amplitude * Math.exp(p[LOG_GAIN]!);

/** Lobe, body and what both leave over, for one set of parameters. */
export function explain(
  problem: HighlightProblem,
  p: Float64Array,
  weights: Float64Array,
  into: Explained,
): BodyTerms {
  const shape = toShape(p);
  lobePicture(problem.window, shape, problem.optics, into.lobe);
  turningAway(problem.window, shape, into.dimming);
  const terms = bodyTerms(weights, into.dimming, problem.window.width, BOWL_RIDGE * into.lobe.length);
  explainRest(problem, p, terms, into);
  return terms;
}

/** The same for a lobe and the terms of a body at hand. */
function explainRest(
  problem: HighlightProblem,
  p: Float64Array,
  terms: BodyTerms,
  { lobe, body, left }: Explained,
): void {
  const { values, use } = problem.window;
  const amplitude = amplitudeOf(problem, p);
  const n = values.length;
  for (let i = 0; i < n; i++) left[i] = values[i]! - amplitude * lobe[i]!;
  bodyFit(left, terms, body);
  for (let i = 0; i < n; i++) {
    const difference = left[i]! - body[i]!;
    left[i] = use[i] === 2 ? Math.max(0, difference) : difference;
  }
}

/** Residuals as `leastSquares` asks for them. */
export function residualsOf(problem: HighlightProblem, weights: Float64Array, sd: number): Residuals {
  const { use } = problem.window;
  const roots = weights.map((weight, i) => Math.sqrt(use[i] === 2 ? 1 : weight) / sd);
  const whole = blank(problem);
  const scratch = blank(problem);
  const withWholeLobe = { ...scratch, lobe: whole.lobe };
  const { window, optics } = problem;
  let terms: BodyTerms;
  return (p, into, moved) => {
    let explained = moved === null ? whole : scratch;
    if (moved === LOG_GAIN) {
      explained = withWholeLobe;
      explainRest(problem, p, terms, explained);
    } else if (moved !== null && moved >= LOG_ALPHA) {
      lobePicture(window, toShape(p), optics, scratch.lobe);
      explainRest(problem, p, terms, explained);
    } else {
      const own = explain(problem, p, weights, explained);
      if (moved === null) terms = own;
    }
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
