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
  const places: number[] = [];
  mask.data.forEach((inside, i) => {
    if (inside) places.push(i);
  });
  const { data } = stone;
  const mean = (i: number) => (data[3 * i]! + data[3 * i + 1]! + data[3 * i + 2]!) / 3;
  const sorted = Float64Array.from(places, mean).sort();
  const limit = sorted[Math.floor((1 - HIGHLIGHT_SHARE) * (sorted.length - 1))] ?? 0;
  const used = places.filter((i) => mean(i) <= limit);
  const center = used.reduce((sum, i) => sum + mean(i), 0) / Math.max(1, used.length);
  const along = [0, 0, 0];
  let square = 0;
  for (const i of used) {
    const apart = mean(i) - center;
    square += apart * apart;
    for (let c = 0; c < 3; c++) along[c]! += apart * data[3 * i + c]!;
  }
  return square > NO_PATTERN * used.length * center ** 2
    ? (Math.max(...along) - Math.min(...along)) / square
    : 0;
}
