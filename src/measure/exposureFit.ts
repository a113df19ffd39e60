import { linearFromSrgb } from '../optics/srgbTransfer';
import type { Tone } from '../optics/toneCurve';
import { toneDecoder } from '../optics/toneDecoder';
import { leastSquares } from './leastSquares';
import type { TonePair } from './tonePairs';

/** Exposures and tone curve that several shots of one scene have in common. */
export interface ExposureFit {
  /** Red, green and blue light of each further shot as a share of the first. */
  readonly exposures: readonly (readonly [number, number, number])[];
  readonly tone: Tone;
  /** Root mean square of what is left over, relative. */
  readonly misfit: number;
}

/** Spread of the S-shape among cameras, wide: the pixels decide. */
const CONTRAST_SD = 2;
/**
 * Spread of `bow`. Pixels alone leave one thing open: any power of the response with the same power of the ratio
 * explains them as well. So it stays near 0 unless EXIF data state the ratio.
 *
 * @see Grossberg & Nayar 2003, "Determining the camera response from images: what is knowable?", section 4.
 */
const BOW_SD = { alone: 0.01, stated: 0.2 };
/** Stated times are nominal (1/60 s stands for 1/64), so EXIF is a witness of this weight, and not heard when far off. */
const STATED = { sd: 0.03, farOff: 0.5 };
/** Spread of a channel's ln exposure about that of all: white balance may follow the exposure, and a channel be unseen. */
const CHANNEL_SD = 0.1;
/** Noise of a code, mean over a place; and what no curve explains, relative. */
const CODE_SD = 1 / 255;
const MODEL_SD = 0.005;
const MOST_COUNTED = 40;
/** A level off by more than this many standard deviations, as scattered as the others are, is left out. */
const OUTLIER = 3.5;
const ROUNDS = 3;
const FEWEST_LEVELS = 6;

/** A level and which further shot it comes from. */
type Level = TonePair & { readonly shot: number };

/**
 * Finds how much light further shots let in, and the tone curve of the camera, from what became of each level.
 *
 * @param pairs - For each further shot, its levels against the first shot's.
 * @param stated - For each, the ratio that EXIF data state, or null.
 * @returns Null when a shot has too few levels in common with the first.
 * @see Debevec & Malik 1997, section 2.1, with a curve of three parameters in place of 256 values.
 */
export function exposureFit(
  pairs: readonly (readonly TonePair[])[],
  stated: readonly (number | null)[],
): ExposureFit | null {
  if (pairs.some((levels) => levels.length < FEWEST_LEVELS)) return null;
  const levels = pairs.flatMap((list, shot) => list.map((pair): Level => ({ ...pair, shot })));
  const start = [...pairs.flatMap((list) => Array(3).fill(Math.log(roughRatio(list)))), 0, 0, 0];
  let p = fitLevels(levels, stated, start);
  let kept = levels;
  for (let round = 0; round < ROUNDS; round++) {
    const left = misfits(levels, p).map((misfit, i) => Math.abs(misfit / sdOf(levels[i]!)));
    const scatter = Math.max(1, 1.483 * median(left));
    kept = levels.filter((_, i) => left[i]! < OUTLIER * scatter);
    p = fitLevels(kept, stated, p);
  }
  const square = misfits(kept, p).reduce((sum, misfit) => sum + misfit ** 2, 0) / kept.length;
  return {
    exposures: pairs.map((_, i) => [Math.exp(p[3 * i]!), Math.exp(p[3 * i + 1]!), Math.exp(p[3 * i + 2]!)]),
    tone: toneOf(p),
    misfit: Math.sqrt(square),
  };
}

/** Minimizes over [ln exposure of red, green, blue for each shot, contrast, knee, bow]. */
function fitLevels(levels: readonly Level[], stated: readonly (number | null)[], start: ArrayLike<number>) {
  const heard = stated.map((ratio, i) => {
    const apart = ratio === null ? Infinity : Math.log(ratio) - start[3 * i + 1]!;
    return Math.abs(apart) < STATED.farOff ? Math.log(ratio!) : null;
  });
  const bowSd = heard.some((ratio) => ratio !== null) ? BOW_SD.stated : BOW_SD.alone;
  const sds = levels.map(sdOf);
  const residuals = (p: Float64Array, into: Float64Array) => {
    misfits(levels, p).forEach((misfit, i) => {
      into[i] = misfit / sds[i]!;
    });
    const { contrast, knee, bow } = toneOf(p);
    const priors = [contrast / CONTRAST_SD, knee / CONTRAST_SD, bow / bowSd];
    const witnesses = heard.flatMap((ratio, i) => {
      const channels = p.slice(3 * i, 3 * i + 3);
      const mean = channels.reduce((sum, one) => sum + one / 3, 0);
      const apart = channels.map((one) => (one - mean) / CHANNEL_SD);
      return [...apart, ratio === null ? 0 : (mean - ratio) / STATED.sd];
    });
    into.set([...priors, ...witnesses], levels.length);
  };
  const steps = Array(start.length).fill(1e-4);
  const settings = { steps, maxIterations: 60, tolerance: 1e-9 };
  return leastSquares(residuals, levels.length + 3 + 4 * heard.length, start, settings).parameters;
}

const toneOf = (p: ArrayLike<number>): Tone => ({
  contrast: p[p.length - 3]!,
  knee: p[p.length - 2]!,
  bow: p[p.length - 1]!,
});

/** For each level, ln of the light seen in the other shot over the light expected there. */
function misfits(levels: readonly Level[], p: ArrayLike<number>): number[] {
  const decode = toneDecoder(toneOf(p));
  const light = (v: number) => Math.log(Math.max(1e-6, decode(v)));
  return levels.map(({ base, other, channel, shot }) => light(other) - light(base) - p[3 * shot + channel]!);
}

/** Standard deviation of a level's misfit from the noise of both codes: the slope of ln light is about 2.4 / (v + 0.055). */
function sdOf({ base, other, count }: Level): number {
  const slopes = (2.4 / (base + 0.055)) ** 2 + (2.4 / (other + 0.055)) ** 2;
  return Math.sqrt(MODEL_SD ** 2 + (slopes * CODE_SD ** 2) / Math.min(MOST_COUNTED, count));
}

function roughRatio(pairs: readonly TonePair[]): number {
  return median(pairs.map(({ base, other }) => linearFromSrgb(other) / linearFromSrgb(base)));
}

function median(values: number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1]!;
}
