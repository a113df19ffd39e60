import { LUMINANCE_WEIGHTS } from '../image/luminance';
import type { Mask, Raster } from '../image/raster';
import { solveSymmetric } from './solveSymmetric';

/**
 * Weights of the channels that keep the lamp's own color at one and the stone's pattern as low as they can.
 *
 * A highlight has the lamp's color, the body its own (dichromatic reflection), so bands and specks can be
 * turned down by color. The weights are those of least variance under a sum of one, pulled toward
 * luminance where the pattern is already weak beside the highlight.
 *
 * @param pattern - `bodyCovariance` of the stone.
 * @param patience - Standard deviation of pattern that is let pass for the sake of luminance's low noise, in the
 *   raster's unit, > 0; a small share of the highlight's expected height.
 * @returns Three weights with sum one; single weights may be negative.
 * @see Capon 1969, Proc. IEEE 57(8), for the weights; Shafer 1985, Color Research and Application 10(4), for the model.
 */
export function colorWeights(pattern: Float64Array, patience: number): [number, number, number] {
  const covariance = Float64Array.from(pattern);
  const pull = patience * patience;
  // Minimize wᵀCw + pull·|w − w₀|² with Σw = 1: with M = C + pull·I, w = M⁻¹(pull·w₀ + λ·1).
  for (let i = 0; i < 3; i++) covariance[i * 3 + i]! += pull;
  const towardLuminance = solveSymmetric(
    covariance,
    Float64Array.from(LUMINANCE_WEIGHTS, (w) => pull * w),
  );
  const towardWhite = solveSymmetric(covariance, Float64Array.of(1, 1, 1));
  if (!towardLuminance || !towardWhite) return [...LUMINANCE_WEIGHTS];
  const lambda = (1 - sum(towardLuminance)) / sum(towardWhite);
  const at = (i: number) => towardLuminance[i]! + lambda * towardWhite[i]!;
  return [at(0), at(1), at(2)];
}

/** Share of the stone whose light is its own: the highlight has no say. */
const OWN_SHARE = 0.9;

/**
 * Covariance of the three channels over the darker 90 % of a stone; every third pixel of it is asked.
 *
 * @param stone - RGB raster in linear light, lamp white = (1, 1, 1).
 * @param mask - The stone.
 * @returns 3 × 3, row-major.
 */
export function bodyCovariance({ data }: Raster, mask: Mask): Float64Array {
  const kept = darker(data, mask);
  const mean = [0, 0, 0];
  for (const i of kept) for (let c = 0; c < 3; c++) mean[c]! += data[3 * i + c]! / kept.length;
  const covariance = new Float64Array(9);
  for (const i of kept) {
    for (let j = 0; j < 3; j++) {
      const apart = (data[3 * i + j]! - mean[j]!) / kept.length;
      for (let k = 0; k < 3; k++) covariance[3 * j + k]! += apart * (data[3 * i + k]! - mean[k]!);
    }
  }
  return covariance;
}

/** Every third pixel of the mask, but for the brightest in green; of those as bright as the limit the first ones. */
function darker(data: Float32Array, mask: Mask): Int32Array {
  const inside = new Int32Array(Math.ceil(mask.data.length / 3));
  const greens = new Float32Array(inside.length);
  let count = 0;
  for (let i = 0; i < mask.data.length; i += 3) {
    if (!mask.data[i]) continue;
    inside[count] = i;
    greens[count++] = data[3 * i + 1]!;
  }
  const most = Math.max(1, Math.floor(OWN_SHARE * count));
  const sorted = greens.slice(0, count).sort();
  const limit = sorted[most - 1] ?? 0;
  let equals = most - sorted.findIndex((green) => green >= limit);
  return inside
    .subarray(0, count)
    .filter((_, k) => greens[k]! < limit || (greens[k] === limit && equals-- > 0));
}

const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);
