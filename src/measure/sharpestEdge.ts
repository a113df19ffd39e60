import { nthSmallest } from '../image/nthSmallest';
import type { Raster } from '../image/raster';
import { samplePixel } from './samplePixel';

/** Share of the pixels, steepest first, that are looked at, and how many of them at most. */
const STEEPEST = { share: 0.004, most: 1500 };
/** Flatter places are no edge, ln units per pixel. */
const LEAST_SLOPE = 0.01;
/** Profiles reach this far to both sides of a steep pixel. */
const REACH_PX = 14;
/** The sharp edges decide: tenth percentile of all widths. */
const QUANTILE = 0.1;

/**
 * Blur of the sharpest edges in a picture: near zero in a picture in focus, whatever it shows.
 *
 * At the steepest places the profile along the gradient is read; a step of height h blurred by a Gaussian of
 * standard deviation σ rises by h / (σ √2π) per pixel at its middle.
 *
 * @param light - One-channel radiance.
 * @returns σ, pixels; null for a picture without edges.
 */
export function sharpestEdge(light: Raster): number | null {
  const { width, height } = light;
  const logLight: Raster = { ...light, data: light.data.map((value) => Math.log(Math.max(value, 0) + 0.01)) };
  const { data } = logLight;
  const at = (row: number, column: number) => data[row * width + column]!;
  const slopes = new Float32Array(width * height);
  for (let row = 1; row < height - 1; row++) {
    for (let i = row * width + 1; i < (row + 1) * width - 1; i++) {
      const down = (data[i + width]! - data[i - width]!) / 2;
      const right = (data[i + 1]! - data[i - 1]!) / 2;
      slopes[i] = Math.sqrt(down * down + right * right);
    }
  }
  const kept = steepest(slopes, Math.min(STEEPEST.most, Math.ceil(STEEPEST.share * width * height))).map(
    (i) => {
      const row = Math.floor(i / width);
      const column = i % width;
      const slope = slopes[i]!;
      const down = (at(row + 1, column) - at(row - 1, column)) / 2 / slope;
      const right = (at(row, column + 1) - at(row, column - 1)) / 2 / slope;
      return { row, column, down, right, slope };
    },
  );
  const widths = kept.map((edge) => edgeWidth(logLight, edge)).sort((a, b) => a - b);
  return widths[Math.floor(QUANTILE * widths.length)] ?? null;
}

/** Places of the largest slopes, at most `count`, none below the least edge. */
function steepest(slopes: Float32Array, count: number): number[] {
  const limit = Math.max(LEAST_SLOPE, nthSmallest(slopes.slice(), slopes.length - count) ?? 0);
  const places: number[] = [];
  for (let i = 0; i < slopes.length && places.length < count; i++) if (slopes[i]! >= limit) places.push(i);
  return places;
}

/** σ of the edge through a steep pixel, from its height between the nearest turning points and its slope. */
function edgeWidth(
  light: Raster,
  edge: { row: number; column: number; down: number; right: number; slope: number },
): number {
  const along = (step: number) =>
    samplePixel(light, edge.row + step * edge.down, edge.column + step * edge.right);
  const turn = (direction: 1 | -1) => {
    let last = along(0);
    for (let step = 1; step <= REACH_PX; step++) {
      const next = along(direction * step);
      if (direction * (next - last) <= 0) break;
      last = next;
    }
    return last;
  };
  return (turn(1) - turn(-1)) / (edge.slope * Math.sqrt(2 * Math.PI));
}
