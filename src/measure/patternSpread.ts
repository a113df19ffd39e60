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
  const means = new Float64Array(mask.data.length);
  for (let i = 0, j = 0; i < means.length; i++, j += 3)
    means[i] = (data[j]! + data[j + 1]! + data[j + 2]!) / 3;
  const own = means.filter((_, i) => mask.data[i]);
  const limit = nthSmallest(own, Math.floor((1 - HIGHLIGHT_SHARE) * (own.length - 1))) ?? 0;
  let total = 0;
  let count = 0;
  for (let i = 0; i < means.length; i++) {
    if (!mask.data[i] || means[i]! > limit) continue;
    total += means[i]!;
    count++;
  }
  const center = total / Math.max(1, count);
  const along: [number, number, number] = [0, 0, 0];
  let square = 0;
  for (let i = 0, j = 0; i < means.length; i++, j += 3) {
    if (!mask.data[i] || means[i]! > limit) continue;
    const apart = means[i]! - center;
    square += apart * apart;
    for (let c = 0; c < 3; c++) along[c]! += apart * data[j + c]!;
  }
  return square > NO_PATTERN * count * center ** 2 ? (Math.max(...along) - Math.min(...along)) / square : 0;
}
