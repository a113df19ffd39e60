import { waveHarmonic } from '../optics/waveHarmonic';
import type { HighlightFit, HighlightProblem } from './highlightFit';
import { lampOutline, OUTLINE_RAYS, type OutlinePoint } from './lampOutline';
import { solveSymmetric } from './solveSymmetric';

/** What the outline of the lamp's image says of waves in a stone's skin, such as orange peel. */
export interface Waviness {
  /** Root mean square of the waves' slope along one direction; null when no waves are seen. */
  readonly slope: number | null;
  /** Ends of the 90 % interval; without waves from 0 to what they have at most (95 %). */
  readonly low: number;
  readonly high: number;
  /** Likeliest wavelength, photo pixels; null when no waves are seen. */
  readonly wavelengthPx: number | null;
  /** Longest waves that are told from the stone's own shape, photo pixels. */
  readonly longestPx: number;
}

/** The lamp's image has clear edges up to this roughness, lamp radii. */
const SHARP_BELOW = 0.5;
/** Pits, dull patches and pattern in the image bend its outline too: what it leaves over at most, share of a perfect polish. */
const MOST_LEFT = 0.2;
/** Narrowest image that is traced: half its width in window pixels, and in standard deviations of the blur. */
const NARROWEST = { px: 2.4, blurs: 2 };
/** Offsets beyond this, lamp radii, are no small bend of an even surface. */
const MOST_OFFSET = 0.5;
/** Rays without an outline, at most. */
const MOST_MISSING = 4;
/** Error of a traced outline apart from the noise: what straight lines between pixels miss, pixels. */
const TRACE_SD_PX = 0.07;
/** Error of the light at the edge, share of a perfect polish (as the fit takes it for the lobe). */
const LIGHT_SD = 0.02;
/** Outline points that lie nearer than this, standard deviations of the blur, err together. */
const TOGETHER = 2.5;
/**
 * Harmonics of the outline from this one on are waves; the fit takes the lower ones for place, curvature and its
 * change. A stone's own shape has that first one `own` times the lamp's radius times that of the image over that of
 * the stone, and each higher one is `decay` times as large (from stones without waves on the development scenes).
 */
const FIRST = 4;
const MOST_HARMONICS = 9;
const SHAPE = { own: 0.25, decay: 0.5 };
/** Expected curvature of a stone, times the radius of its silhouette; see `CURVATURE_PRIOR`. */
const FLATTER = 0.75;
/** Waves looked for: circumferences of the image over the wavelength, and slopes in lamp radii. */
const CYCLES = { from: 2.5, to: 8, count: 9 };
const SLOPES = { from: 0.01, to: 1, count: 47 };
/**
 * Waves that bend the skin more than this share of what the stone itself does break the image up, and its outline shows
 * ever less of them: the upper end is then taken to lie this much higher (from drawn highlights).
 */
const BREAKING = { bend: 0.9, wider: 2 };
/** Waves are believed from this many times as likely as none. */
const LEAST_ODDS = 10;

/**
 * Measures waves of a polished skin, apart from its roughness: they bend the outline of the lamp's image while its
 * edges stay sharp.
 *
 * Waves of wavelength λ and slope s bend the outline of an image of radius r by harmonics m with the variance
 * 4 s² J′ₘ(2πr/λ)² each for cosine and sine; the fit itself takes those below the fourth. Slope and
 * wavelength are weighed together by how likely they make the harmonics that were measured, against what noise and
 * a stone's own shape bring. Waves longer than 2.5 r look like that shape.
 *
 * @param problem - The window of the highlight and what is known.
 * @param fit - Its fit.
 * @returns null where the image is too soft, too small, broken or cut to be traced.
 */
export function waviness(problem: HighlightProblem, fit: HighlightFit): Waviness | null {
  const { window, optics, prior } = problem;
  if (fit.shape.alpha > SHARP_BELOW * optics.sourceSlope) return null;
  const blurPx = Math.max(0.5, optics.blurPx / window.stepPx);
  const radiusPx = optics.sourceSlope / (Math.exp(fit.shape.mean) * window.stepPx);
  const narrowPx = radiusPx * Math.exp(-Math.hypot(fit.shape.stretch, fit.shape.skew));
  if (narrowPx < Math.max(NARROWEST.px, NARROWEST.blurs * blurPx)) return null;
  if (leftInside(problem, fit) > MOST_LEFT) return null;
  const outline = lampOutline(problem, fit);
  if (outline.length < OUTLINE_RAYS - MOST_MISSING) return null;
  if (outline.some(({ offset }) => Math.abs(offset) > MOST_OFFSET * optics.sourceSlope)) return null;
  const around = 2 * Math.PI * radiusPx;
  const count = Math.max(FIRST + 1, Math.min(MOST_HARMONICS, Math.floor(around / (4 * Math.max(1, blurPx)))));
  const powers = harmonicPowers(outline, count);
  if (!powers) return null;
  const imagePx = radiusPx * window.stepPx;
  const share = (imagePx * Math.exp(prior.curvatureMean)) / FLATTER;
  const noise = noiseSd(outline, fit) * Math.sqrt(2 / Math.max(4, around / (TOGETHER * blurPx)));
  const own = powers.map((_, i) => {
    const shape = SHAPE.own * optics.sourceSlope * share * SHAPE.decay ** i;
    return noise * noise + shape * shape;
  });
  return weighed(powers, own, optics.sourceSlope, imagePx);
}

/** Root mean square of what the fit leaves over inside the image, share of a perfect polish. */
function leftInside({ window }: HighlightProblem, fit: HighlightFit): number {
  const half = 0.5 * fit.lobe.reduce((most, value) => Math.max(most, value), 0);
  let sum = 0;
  let count = 0;
  fit.lobe.forEach((lobe, i) => {
    if (lobe < half || window.use[i] === 0) return;
    const left = (window.values[i]! - fit.body[i]!) / fit.amplitude - lobe;
    sum += (window.use[i] === 2 ? Math.max(0, left) : left) ** 2;
    count++;
  });
  return count > 0 ? Math.sqrt(sum / count) : Number.POSITIVE_INFINITY;
}

/** Error of one traced point, slope. */
function noiseSd(outline: readonly OutlinePoint[], fit: HighlightFit): number {
  const light = Math.hypot(fit.residualSd / fit.amplitude, LIGHT_SD);
  const squares = outline.map(
    ({ slopePerPx, steepness }) => (slopePerPx * Math.hypot(TRACE_SD_PX, light / steepness)) ** 2,
  );
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
}

/** Squared amplitudes of the outline's harmonics from the third on. */
function harmonicPowers(outline: readonly OutlinePoint[], count: number): number[] | null {
  const size = 2 * count + 1;
  const normal = new Float64Array(size * size);
  const right = new Float64Array(size);
  for (const { turnRad, offset } of outline) {
    const terms = [1];
    for (let m = 1; m <= count; m++) terms.push(Math.cos(m * turnRad), Math.sin(m * turnRad));
    terms.forEach((term, j) => {
      right[j]! += term * offset;
      terms.forEach((other, k) => {
        normal[j * size + k]! += term * other;
      });
    });
  }
  const solution = solveSymmetric(normal, right);
  if (!solution) return null;
  return Array.from({ length: count - FIRST + 1 }, (_, i) => {
    const m = FIRST + i;
    return solution[2 * m - 1]! ** 2 + solution[2 * m]! ** 2;
  });
}

/** Slope and wavelength by their likelihood; all slopes and all wavelengths looked for have even odds beforehand, by logarithm. */
function weighed(
  powers: readonly number[],
  own: readonly number[],
  lampSlope: number,
  imagePx: number,
): Waviness {
  const none = logLikelihood(powers, own);
  const slopes = steps(SLOPES).map((slope) => slope * lampSlope);
  const cycles = steps(CYCLES);
  const bends = cycles.map((cycle) => powers.map((_, i) => 4 * waveHarmonic(FIRST + i, cycle) ** 2));
  const odds = slopes.map((slope) =>
    bends.map((bend) =>
      Math.exp(
        logLikelihood(
          powers,
          own.map((v, i) => v + slope * slope * bend[i]!),
        ) - none,
      ),
    ),
  );
  const bySlope = odds.map(total);
  const longestPx = (2 * Math.PI * imagePx) / CYCLES.from;
  const ratio = total(bySlope) / (slopes.length * cycles.length);
  if (ratio < LEAST_ODDS) {
    // A bound must not hang on the smallest slope looked for: here slopes themselves have even odds.
    const high = quantile(
      slopes,
      bySlope.map((weight, i) => weight * slopes[i]!),
      0.95,
    );
    return { slope: null, low: 0, high, wavelengthPx: null, longestPx };
  }
  const byCycle = cycles.map((_, k) => odds.reduce((sum, row) => sum + row[k]!, 0));
  const [slope, cycle] = [meanOf(slopes, bySlope), meanOf(cycles, byCycle)];
  const wider = slope * cycle > BREAKING.bend * lampSlope ? BREAKING.wider : 1;
  return {
    slope,
    low: quantile(slopes, bySlope, 0.05),
    high: wider * quantile(slopes, bySlope, 0.95),
    wavelengthPx: (2 * Math.PI * imagePx) / cycle,
    longestPx,
  };
}

/** Of harmonics that are normally distributed in cosine and sine, but for a constant. */
function logLikelihood(powers: readonly number[], variances: readonly number[]): number {
  return powers.reduce((sum, power, i) => sum - Math.log(variances[i]!) - power / (2 * variances[i]!), 0);
}

const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

/** Values evenly spaced by their logarithm. */
function steps({ from, to, count }: { readonly from: number; readonly to: number; readonly count: number }) {
  return Array.from({ length: count }, (_, i) => from * (to / from) ** (i / (count - 1)));
}

/** Weighted mean by logarithm. */
function meanOf(values: readonly number[], weights: readonly number[]): number {
  return Math.exp(total(values.map((value, i) => weights[i]! * Math.log(value))) / total(weights));
}

/** The value below which that share of the weight lies. */
function quantile(values: readonly number[], weights: readonly number[], share: number): number {
  let left = share * total(weights);
  for (const [i, weight] of weights.entries()) {
    left -= weight;
    if (left <= 0) return values[i]!;
  }
  return values[values.length - 1]!;
}
