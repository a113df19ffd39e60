import { bodyFit } from './bodyFit';
import { type HighlightWindow, type LobeOptics, type LobeShape, lobePicture } from './highlightModel';
import { leastSquares } from './leastSquares';

/** What is known about a highlight before it is fitted. */
export interface HighlightPrior {
  /** Radiance of a perfect polish of the assumed index there. */
  readonly amplitude: number;
  /** Standard deviation of the amplitude's logarithm. */
  readonly amplitudeSd: number;
  /** Natural logarithm of the expected curvature, slope per photo pixel, and its standard deviation. */
  readonly curvatureMean: number;
  readonly curvatureSd: number;
}

/** A fitted highlight. */
export interface HighlightFit {
  readonly shape: LobeShape;
  readonly amplitude: number;
  /** The lobe as drawn in the window, share of the lamp's radiance, 0 to 1. */
  readonly lobe: Float64Array;
  /** The stone's own light in the window. */
  readonly body: Float64Array;
  /** Robust standard deviation of what the fit leaves over. */
  readonly residualSd: number;
  /** Weights of the last round, 0 to 1; outliers are low. */
  readonly weights: Float64Array;
  /** Sum of squared weighted residuals over residualSd², priors included. */
  readonly cost: number;
}

const STEPS = [0.05, 0.05, 0.02, 0.02, 0.02, 0.02, 0.01];
const ALPHA_BOUNDS = [0.0015, 0.8] as const;
/** Spread of the stretch and skew of the curvature's logarithm; a stone twice as long as wide has about 0.5. */
const STRETCH_SD = 0.5;
/** Residuals beyond this many standard deviations count ever less (Cauchy weights). */
const OUTLIER_SDS = 2.5;
/** Noise that an 8-bit compressed photo has even where the stone is plain: share of the amplitude, and absolute. */
const NOISE_FLOOR = { share: 0.006, radiance: 0.0015 };

/** Holds one parameter at its start, or none. */
export type Held = 'alpha' | null;

/**
 * Fits center, curvature, roughness and body of one highlight together.
 *
 * @param window - The stone around the highlight.
 * @param optics - Lamp and camera.
 * @param prior - Amplitude of a perfect polish and the curvature expected from the stone's size.
 * @param start - Where the search begins.
 * @param held - `'alpha'` to keep the start's roughness.
 * @param rounds - Rounds of re-weighting, ≥ 1.
 * @returns The fit; compare `cost` only between fits that end with equal weights.
 */
export function highlightFit(
  window: HighlightWindow,
  optics: LobeOptics,
  prior: HighlightPrior,
  start: { readonly shape: LobeShape; readonly weights?: Float64Array; readonly residualSd?: number },
  held: Held = null,
  rounds = 3,
): HighlightFit {
  let parameters: Float64Array = Float64Array.from(toParameters(start.shape, 0));
  const fixed = start.weights !== undefined && start.residualSd !== undefined;
  let weights: Float64Array = start.weights ?? plainWeights(window);
  let sd = start.residualSd ?? 1;
  const steps = STEPS.map((step, i) => (held === 'alpha' && i === 5 ? 0 : step));
  for (let round = 0; round < (fixed ? 1 : rounds); round++) {
    if (!fixed) {
      const left = leftOver(window, optics, prior, parameters, weights);
      sd = Math.max(robustSd(left, window.use), noiseFloor(prior.amplitude));
      weights = outlierWeights(left, sd, window.use);
    }
    const residuals = residualsOf(window, optics, prior, weights, sd);
    const count = window.values.length + PRIOR_COUNT;
    parameters = leastSquares(residuals, count, parameters, {
      steps,
      maxIterations: 14,
      tolerance: 1e-4,
    }).parameters;
  }
  return described(window, optics, prior, parameters, weights, sd);
}

const PRIOR_COUNT = 6;

function toParameters(shape: LobeShape, logGain: number): number[] {
  return [shape.row, shape.column, shape.mean, shape.stretch, shape.skew, Math.log(shape.alpha), logGain];
}

function toShape(p: Float64Array): LobeShape {
  const alpha = Math.min(ALPHA_BOUNDS[1], Math.max(ALPHA_BOUNDS[0], Math.exp(p[5]!)));
  return { row: p[0]!, column: p[1]!, mean: p[2]!, stretch: p[3]!, skew: p[4]!, alpha };
}

function noiseFloor(amplitude: number): number {
  return NOISE_FLOOR.share * Math.min(1, amplitude) + NOISE_FLOOR.radiance;
}

function plainWeights(window: HighlightWindow): Float64Array {
  return Float64Array.from(window.use, (use) => (use === 1 ? 1 : 0));
}

/** Lobe, body and what both leave over, for one set of parameters. */
function explain(
  window: HighlightWindow,
  optics: LobeOptics,
  prior: HighlightPrior,
  p: Float64Array,
  weights: Float64Array,
) {
  const lobe = lobePicture(window, toShape(p), optics);
  const amplitude = prior.amplitude * Math.exp(p[6]!);
  const rest = window.values.map((value, i) => value - amplitude * lobe[i]!);
  const body = bodyFit(rest, weights, window.width, 0.1 * window.values.length);
  const left = rest.map((value, i) =>
    window.use[i] === 2 ? Math.max(0, value - body[i]!) : value - body[i]!,
  );
  return { lobe, amplitude, body, left };
}

function leftOver(
  window: HighlightWindow,
  optics: LobeOptics,
  prior: HighlightPrior,
  p: Float64Array,
  weights: Float64Array,
): Float64Array {
  return explain(window, optics, prior, p, weights).left;
}

function residualsOf(
  window: HighlightWindow,
  optics: LobeOptics,
  prior: HighlightPrior,
  weights: Float64Array,
  sd: number,
) {
  const n = window.values.length;
  return (p: Float64Array, into: Float64Array): void => {
    const { left } = explain(window, optics, prior, p, weights);
    for (let i = 0; i < n; i++) {
      const weight = window.use[i] === 2 ? 1 : weights[i]!;
      into[i] = (Math.sqrt(weight) * left[i]!) / sd;
    }
    into[n] = (p[2]! - prior.curvatureMean) / prior.curvatureSd;
    into[n + 1] = p[3]! / STRETCH_SD;
    into[n + 2] = p[4]! / STRETCH_SD;
    into[n + 3] = p[6]! / prior.amplitudeSd;
    const logAlpha = p[5]!;
    into[n + 4] = 20 * Math.max(0, logAlpha - Math.log(ALPHA_BOUNDS[1]));
    into[n + 5] = 20 * Math.max(0, Math.log(ALPHA_BOUNDS[0]) - logAlpha);
  };
}

function robustSd(left: Float64Array, use: Uint8Array): number {
  const sizes = left
    .filter((_, i) => use[i] === 1)
    .map(Math.abs)
    .sort();
  return sizes.length === 0 ? 0 : 1.4826 * sizes[sizes.length >> 1]!;
}

function outlierWeights(left: Float64Array, sd: number, use: Uint8Array): Float64Array {
  return left.map((value, i) => (use[i] === 1 ? 1 / (1 + (value / (OUTLIER_SDS * sd)) ** 2) : 0));
}

function described(
  window: HighlightWindow,
  optics: LobeOptics,
  prior: HighlightPrior,
  parameters: Float64Array,
  weights: Float64Array,
  sd: number,
): HighlightFit {
  const { lobe, amplitude, body } = explain(window, optics, prior, parameters, weights);
  const residuals = new Float64Array(window.values.length + PRIOR_COUNT);
  residualsOf(window, optics, prior, weights, sd)(parameters, residuals);
  const cost = residuals.reduce((sum, r) => sum + r * r, 0);
  return { shape: toShape(parameters), amplitude, lobe, body, residualSd: sd, weights, cost };
}
