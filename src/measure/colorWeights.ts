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
 * @param stone - RGB raster in linear light, lamp white = (1, 1, 1).
 * @param mask - The stone.
 * @param patience - Standard deviation of pattern that is let pass for the sake of luminance's low noise, in the
 *   raster's unit, > 0; a small share of the highlight's expected height.
 * @returns Three weights with sum one; single weights may be negative.
 * @see Capon 1969, Proc. IEEE 57(8), for the weights; Shafer 1985, Color Research and Application 10(4), for the model.
 */
export function colorWeights(stone: Raster, mask: Mask, patience: number): [number, number, number] {
  const covariance = bodyCovariance(stone, mask);
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

/** Covariance of the three channels over the darker 90 % of the stone, so that the highlight itself has no say. */
function bodyCovariance(stone: Raster, mask: Mask): Float64Array {
  const inside: number[] = [];
  for (let i = 0; i < mask.data.length; i += 3) if (mask.data[i]) inside.push(i);
  const green = (i: number) => stone.data[3 * i + 1]!;
  inside.sort((p, q) => green(p) - green(q));
  const kept = inside.slice(0, Math.max(1, Math.floor(0.9 * inside.length)));
  const mean = [0, 1, 2].map(
    (c) => kept.reduce((total, i) => total + stone.data[3 * i + c]!, 0) / kept.length,
  );
  const covariance = new Float64Array(9);
  for (const i of kept) {
    for (let j = 0; j < 3; j++) {
      for (let k = 0; k < 3; k++) {
        covariance[3 * j + k]! += (stone.data[3 * i + j]! - mean[j]!) * (stone.data[3 * i + k]! - mean[k]!);
      }
    }
  }
  return covariance.map((value) => value / kept.length);
}

const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);
