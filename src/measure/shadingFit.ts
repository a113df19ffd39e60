import { leastSquares, type Residuals } from './leastSquares';
import type { StoneSamples } from './stoneSamples';
import { SHADING_PRIOR, type ShadingLight, type StoneShading, shadeStone } from './stoneShading';
import { type ChannelSpread, lowerInverse, tSpread } from './tSpread';

/** One fit of shape, fill light and lobe height to the light of a whole stone. */
export interface ShadingFit {
  /** Height, two tilts, flatness, fill light and gain as the fit varies them; where a next fit may begin. */
  readonly parameters: readonly number[];
  /** Minus twice the logarithm of the likelihood, priors included, counted in independent samples. */
  readonly cost: number;
  readonly shading: StoneShading;
  /** The stone's own light per unit of `shading.body`, red, green, blue of each patch. */
  readonly albedo: Float64Array;
  /** Radiance of a perfect polish as fitted. */
  readonly amplitude: number;
  /** Residuals, three channels a sample, brought to unit spread. */
  readonly whitened: Float64Array;
}

/** What is held while a stone's shading is fitted. */
export interface ShadingProblem {
  readonly samples: StoneSamples;
  /** Patch of one color that each sample belongs to, counted from 0. */
  readonly patches: Uint8Array;
  readonly light: ShadingLight;
  /** Expected radiance of a perfect polish; 0 for a stone without a lobe. */
  readonly amplitude: number;
  readonly alpha: number;
  /** Share of the samples that are independent, 0 to 1. */
  readonly independentShare: number;
}

/** Degrees of freedom of the t distribution that pattern and pits follow. */
const FREEDOM = 4;
/** Error of a sample's light beside its lobe, share of it and absolute; one sample counts at most so many of them. */
const OVERSHOOT = { share: 0.1, light: 0.005, most: 8 };
/** Nearest that a sample comes to the slope that mirrors the lamp, lamp radii: the grid is about one radius wide. */
const HIDDEN = { from: 1.5, sd: 0.3, most: 4 };
const ROUNDS = 3;
const ITERATIONS = 4;
const STEPS = [0.03, 0.02, 0.02, 0.03, 0.05, 0.01];
const GAIN = 5;
const PRIORS = STEPS.length;
const IDENTITY = [1, 0, 0, 0, 1, 0, 0, 0, 1];

/** Where a first fit begins. */
export const USUAL_SHADING: readonly number[] = [
  SHADING_PRIOR.lnHeight.mean,
  0,
  0,
  SHADING_PRIOR.lnFlatness.mean,
  SHADING_PRIOR.lnFill.mean,
  0,
];

/**
 * Fits a dome, its body color, fill light and lobe height at a given roughness.
 *
 * What the stone's pattern leaves over is taken to follow a multivariate t distribution over the color channels:
 * pattern of one strong color costs little along that color, and pits and specks count little.
 *
 * @param problem - What is held.
 * @param from - Parameters to begin with, such as `USUAL_SHADING`.
 * @see Lange, Little, Taylor 1989, J. Am. Stat. Assoc. 84, for the fit by re-weighting.
 */
export function shadingFit(problem: ShadingProblem, from: readonly number[]): ShadingFit {
  const count = problem.samples.x.length;
  const work: Workspace = {
    problem,
    weights: new Float64Array(count).fill(1),
    shading: blankShading(count),
    moved: blankShading(count),
  };
  const residuals = new Float64Array(3 * count);
  const steps = problem.amplitude > 0 ? STEPS : [...STEPS.slice(0, -1), 0];
  let spread: ChannelSpread = lowerInverse(IDENTITY);
  let p = Float64Array.from(from);
  for (let round = 0; round < ROUNDS; round++) {
    plainResiduals(work, p, residuals, null);
    spread = tSpread(residuals, work.weights, FREEDOM);
    const weighted: Residuals = (q, into, moved) => weightedResiduals(work, spread, q, into, moved);
    const settings = { steps, maxIterations: ITERATIONS, tolerance: 1e-3 };
    p = Float64Array.from(leastSquares(weighted, 3 * count + PRIORS, p, settings).parameters);
  }
  const albedo = plainResiduals(work, p, residuals, null);
  const final = tSpread(residuals, work.weights, FREEDOM);
  const prior = priors(p).reduce((sum, value) => sum + value * value, 0);
  const whitened = new Float64Array(3 * count + PRIORS);
  weightedResiduals(work, final, p, whitened, null);
  return {
    parameters: [...p],
    cost:
      problem.independentShare * final.minusTwoLogLikelihood + overshoot(work, p) + hiddenPeak(work) + prior,
    shading: work.shading,
    albedo,
    amplitude: amplitudeOf(problem, p),
    whitened: whitened.subarray(0, 3 * count),
  };
}

interface Workspace {
  readonly problem: ShadingProblem;
  readonly weights: Float64Array;
  /** Of the parameters, and of parameters of which one is moved. */
  readonly shading: StoneShading;
  readonly moved: StoneShading;
}

const blankShading = (count: number): StoneShading => ({
  body: new Float64Array(count),
  lobe: new Float64Array(count),
  apart: new Float64Array(count),
});

const amplitudeOf = ({ amplitude }: ShadingProblem, p: ArrayLike<number>) => amplitude * Math.exp(p[5]!);

/** Fills in what body and lobe leave over in each channel; returns the albedo of least squares. */
function plainResiduals(
  work: Workspace,
  p: ArrayLike<number>,
  into: Float64Array,
  moved: number | null,
): Float64Array {
  const { problem, weights } = work;
  // The gain alone changes no shading.
  const shading = moved === null || moved === GAIN ? work.shading : work.moved;
  const { samples, patches, light, alpha } = problem;
  const [lnHeight, tiltX, tiltY, lnFlatness, lnFill] = p as unknown as [
    number,
    number,
    number,
    number,
    number,
  ];
  const shape = { lnHeight, tilt: [tiltX, tiltY], lnFlatness, lnFill, alpha } as const;
  if (moved !== GAIN) shadeStone(samples, light, shape, shading);
  const { body, lobe } = shading;
  const gain = amplitudeOf(problem, p);
  const albedo = albedoOf(problem, weights, shading, gain);
  for (let i = 0; i < body.length; i++) {
    const own = body[i]!;
    const mirrored = gain * lobe[i]!;
    const patch = 3 * patches[i]!;
    for (let c = 0; c < 3; c++) {
      const left = samples.light[3 * i + c]! - albedo[patch + c]! * own - mirrored;
      into[3 * i + c] = own > 0 ? left : 0;
    }
  }
  return albedo;
}

/** Albedo of each patch by least squares, not below zero. */
function albedoOf(
  { samples, patches }: ShadingProblem,
  weights: Float64Array,
  { body, lobe }: StoneShading,
  gain: number,
): Float64Array {
  const count = 1 + patches.reduce((most, patch) => Math.max(most, patch), 0);
  const sums = new Float64Array(3 * count);
  const squares = new Float64Array(count);
  for (let i = 0; i < body.length; i++) {
    const weight = weights[i]! * body[i]!;
    const patch = patches[i]!;
    squares[patch]! += weight * body[i]!;
    for (let c = 0; c < 3; c++)
      sums[3 * patch + c]! += weight * (samples.light[3 * i + c]! - gain * lobe[i]!);
  }
  return sums.map((sum, k) => Math.max(0, sum / Math.max(squares[Math.floor(k / 3)]!, 1e-12)));
}

/**
 * How much brighter the lobe alone is than what is seen, squared and in units of its own error. The t distribution
 * would take such places for outliers, like pits; but no sound skin is darker than the light it mirrors.
 */
function overshoot({ problem, shading }: Workspace, p: ArrayLike<number>): number {
  const { light } = problem.samples;
  const gain = amplitudeOf(problem, p);
  return shading.lobe.reduce((sum, lobe, i) => {
    const seen = (light[3 * i]! + light[3 * i + 1]! + light[3 * i + 2]!) / 3;
    const over = (gain * lobe - seen) / (OVERSHOOT.share * Math.abs(seen) + OVERSHOOT.light);
    return over > 0 ? sum + Math.min(over, OVERSHOOT.most) ** 2 : sum;
  }, 0);
}

/** A closed stone mirrors the lamp somewhere, so a shape whose creases and rim leave that slope out is none. */
function hiddenPeak({ problem, shading }: Workspace): number {
  if (problem.amplitude === 0) return 0;
  const nearest = shading.apart.reduce((least, apart) => (apart < least ? apart : least), HIDDEN.most);
  return (Math.max(0, nearest - HIDDEN.from) / HIDDEN.sd) ** 2;
}

function weightedResiduals(
  work: Workspace,
  { inverse }: ChannelSpread,
  p: Float64Array,
  into: Float64Array,
  moved: number | null,
): void {
  plainResiduals(work, p, into, moved);
  const count = 3 * work.weights.length;
  for (let i = 0; i < count; i += 3) {
    const weight = Math.sqrt(work.problem.independentShare * work.weights[i / 3]!);
    const [r, g, b] = [into[i]!, into[i + 1]!, into[i + 2]!];
    into[i] = weight * inverse[0]! * r;
    into[i + 1] = weight * (inverse[3]! * r + inverse[4]! * g);
    into[i + 2] = weight * (inverse[6]! * r + inverse[7]! * g + inverse[8]! * b);
  }
  priors(p).forEach((value, k) => {
    into[count + k] = value;
  });
}

function priors(p: ArrayLike<number>): number[] {
  const { lnHeight, tiltSd, lnFlatness, lnFill, lnGainSd } = SHADING_PRIOR;
  return [
    (p[0]! - lnHeight.mean) / lnHeight.sd,
    p[1]! / tiltSd,
    p[2]! / tiltSd,
    (p[3]! - lnFlatness.mean) / lnFlatness.sd,
    (p[4]! - lnFill.mean) / lnFill.sd,
    p[5]! / lnGainSd,
  ];
}
