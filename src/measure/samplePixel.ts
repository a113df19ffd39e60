import type { Raster } from '../image/raster';

/**
 * Value of a one-channel raster between pixels, by bilinear interpolation; outside, the nearest edge pixel's.
 *
 * @param raster - One channel.
 * @param row - Row, pixel centers at whole numbers.
 * @param column - Column likewise.
 * @returns The value, in the raster's unit.
 */
export function samplePixel(raster: Raster, row: number, column: number): number {
  const y = Math.min(raster.height - 1, Math.max(0, row));
  const x = Math.min(raster.width - 1, Math.max(0, column));
  const top = Math.min(raster.height - 2, Math.floor(y));
  const left = Math.min(raster.width - 2, Math.floor(x));
  if (top < 0 || left < 0) return raster.data[Math.round(y) * raster.width + Math.round(x)]!;
  const down = y - top;
  const across = x - left;
  const i = top * raster.width + left;
  const upper = raster.data[i]! * (1 - across) + raster.data[i + 1]! * across;
  const lower = raster.data[i + raster.width]! * (1 - across) + raster.data[i + raster.width + 1]! * across;
  return upper * (1 - down) + lower * down;
}
