import type { Mask, Raster } from '../image/raster';
import { samplePixel } from './samplePixel';

/** A place of a picture, row and column. */
type Point = readonly [row: number, column: number];

/** Light is added up this far to both sides of a line, and held against that of the sides beyond, mm. */
const REACH_MM = 0.28;
const SIDES_MM = [0.36, 0.45, 0.54];
/** Steps along and across, mm. */
const STEP_MM = 0.06;
/** Fewer places along a line say nothing. */
const FEWEST = 8;

/**
 * Light that a thin straight line adds to its surroundings, summed across it and averaged along it. A camera's blur
 * spreads it, but does not change it; a line as bright as 1 above its surroundings and w wide adds w.
 *
 * @param light - One channel, linear.
 * @param mask - Where the light is the stone's.
 * @param ends - Both ends of the line, pixels.
 * @param mmPerPx - Scale.
 * @returns Light · mm, negative where the line is darker; null where too little of it is seen.
 */
export function addedLight(
  light: Raster,
  mask: Mask,
  [first, last]: readonly [Point, Point],
  mmPerPx: number,
): number | null {
  const length = Math.hypot(last[0] - first[0], last[1] - first[1]);
  const [down, right] = [(last[0] - first[0]) / length, (last[1] - first[1]) / length];
  const step = STEP_MM / mmPerPx;
  let [sum, count] = [0, 0];
  for (let s = 0; s <= length; s += step) {
    const at = (offset: number) =>
      between(light, mask, first[0] + s * down + offset * right, first[1] + s * right - offset * down);
    const one = sumAcross(at, mmPerPx);
    if (!Number.isFinite(one)) continue;
    sum += one;
    count++;
  }
  return count < FEWEST ? null : sum / count;
}

function sumAcross(at: (offsetPx: number) => number, mmPerPx: number): number {
  const side = (sign: 1 | -1) =>
    SIDES_MM.reduce((sum, mm) => sum + at((sign * mm) / mmPerPx), 0) / SIDES_MM.length;
  const [left, right] = [side(-1), side(1)];
  let sum = 0;
  for (let mm = -REACH_MM; mm <= REACH_MM + 1e-9; mm += STEP_MM) {
    // Light may rise from side to side.
    const share = (mm / SIDES_MM[1]! + 1) / 2;
    sum += STEP_MM * (at(mm / mmPerPx) - left - share * (right - left));
  }
  return sum;
}

/** Light between pixels; not a number where any pixel around is not the mask's. */
function between(light: Raster, { width, height, data }: Mask, y: number, x: number): number {
  const [row, column] = [Math.floor(y), Math.floor(x)];
  if (row < 0 || column < 0 || row + 1 >= height || column + 1 >= width) return Number.NaN;
  const i = row * width + column;
  const isWhole = data[i] && data[i + 1] && data[i + width] && data[i + width + 1];
  return isWhole ? samplePixel(light, y, x) : Number.NaN;
}
