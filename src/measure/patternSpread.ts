import { nthSmallest } from '../image/nthSmallest';
import type { Mask, Raster } from '../image/raster';

/** Brightest share of the stone that is left out, since the lamp's image may lie there. */
const HIGHLIGHT_SHARE = 0.1;
/** Variance below which a stone is of one even color, share of its squared light. */
const NO_PATTERN = 1e-8;

/**
 * How unequal a stone's own pattern is among the color channels.
 *
 * Each channel is regressed on the mean of the three; light and shade alone, and a pattern of grays, change all
 * channels alike, colored patches do not.
 *
 * @param stone - RGB raster, lamp white = (1, 1, 1).
 * @param mask - The stone.
 * @returns Largest less smallest slope, 0 for a gray pattern; 0 for a stone of one even color.
 */
export function patternSpread(stone: Raster, mask: Mask): number {
  const { data } = stone;
  const own = new Float64Array(mask.data.length);
  const at = new Int32Array(mask.data.length);
  let inside = 0;
  for (let i = 0, j = 0; i < own.length; i++, j += 3) {
    if (!mask.data[i]) continue;
    own[inside] = (data[j]! + data[j + 1]! + data[j + 2]!) / 3;
    at[inside++] = j;
  }
  const means = own.subarray(0, inside);
  const limit = nthSmallest(means.slice(), Math.floor((1 - HIGHLIGHT_SHARE) * (inside - 1))) ?? 0;
  let total = 0;
  let count = 0;
  for (const mean of means) {
    if (mean > limit) continue;
    total += mean;
    count++;
  }
  const center = total / Math.max(1, count);
  let red = 0;
  let green = 0;
  let blue = 0;
  let square = 0;
  for (let k = 0; k < inside; k++) {
    if (means[k]! > limit) continue;
    const apart = means[k]! - center;
    const j = at[k]!;
    square += apart * apart;
    red += apart * data[j]!;
    green += apart * data[j + 1]!;
    blue += apart * data[j + 2]!;
  }
  const spread = Math.max(red, green, blue) - Math.min(red, green, blue);
  return square > NO_PATTERN * count * center ** 2 ? spread / square : 0;
}
