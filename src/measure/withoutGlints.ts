import type { Mask, Raster } from '../image/raster';
import { maskedBlur } from './maskedBlur';
import { solveSymmetric } from './solveSymmetric';
import type { Blur } from './stoneSurface';

/** A glint is wider than this, mm: the two sides of a small hollow cancel over it. */
const GLINT_MM = 0.6;
/** Where the difference lies this far off the stone's own shading, one of the photos shows a glint or a facet, in logarithms. */
const OFF = 0.25;
/** Kept clear around it, mm. */
const MARGIN_MM = 0.5;
/** Rounds of reweighting, and the error beyond which a place loses weight, in logarithms. */
const ROUNDS = 6;
const SOFT = 0.1;

/**
 * Leaves out where a stone mirrors the lamp in one of two photos: glints move with the lamp, as hollows' shading does.
 *
 * The shading of a dome under two lamps differs smoothly, by a polynomial of second degree; glints lie off it.
 *
 * @param difference - Logarithm of the first photo less that of the second; NaN where either shows nothing.
 * @param mask - The stone.
 * @param mmPerPlace - Scale.
 * @param blur - Gaussian blur.
 * @returns The same with NaN at glints.
 */
export function withoutGlints(difference: Raster, mask: Mask, mmPerPlace: number, blur: Blur): Raster {
  const { width, height, data } = difference;
  const seen: Mask = {
    ...mask,
    data: mask.data.map((inside, i) => (inside && !Number.isNaN(data[i]!) ? 1 : 0)),
  };
  const filled = { ...difference, data: data.map((value) => (Number.isNaN(value) ? 0 : value)) };
  const soft = maskedBlur(filled, seen, GLINT_MM / mmPerPlace, blur);
  const shading = smoothShading(soft, seen);
  const off = Float32Array.from(soft.data, (value, i) =>
    seen.data[i] && Math.abs(value - shading(i)) > OFF ? 1 : 0,
  );
  const near = blur({ width, height, channels: 1, data: off }, MARGIN_MM / 2 / mmPerPlace);
  return { ...difference, data: data.map((value, i) => (near.data[i]! > 0.1 ? Number.NaN : value)) };
}

/** Second-degree polynomial through the places of a mask, outliers weighed down as by Cauchy's distribution. */
function smoothShading({ width, height, data }: Raster, mask: Mask): (index: number) => number {
  const terms = (i: number) => {
    const y = (2 * Math.floor(i / width)) / height - 1;
    const x = (2 * (i % width)) / width - 1;
    return [1, x, y, x * x, x * y, y * y];
  };
  let factors = new Float64Array(6);
  const at = (i: number) => terms(i).reduce((sum, term, k) => sum + term * factors[k]!, 0);
  for (let round = 0; round < ROUNDS; round++) {
    const matrix = new Float64Array(36);
    const sides = new Float64Array(6);
    for (let i = 0; i < data.length; i++) {
      if (!mask.data[i]) continue;
      const basis = terms(i);
      const weight = round === 0 ? 1 : 1 / (1 + ((data[i]! - at(i)) / SOFT) ** 2);
      for (let a = 0; a < 6; a++) {
        sides[a]! += weight * basis[a]! * data[i]!;
        for (let b = 0; b < 6; b++) matrix[6 * a + b]! += weight * basis[a]! * basis[b]!;
      }
    }
    factors = (solveSymmetric(matrix, sides) as Float64Array<ArrayBuffer> | null) ?? factors;
  }
  return at;
}
