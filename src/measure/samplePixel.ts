import type { Raster } from '../image/raster';

/**
 * Value of a one-channel raster between pixels, by bilinear interpolation; outside, the nearest edge pixel's.
 *
 * @param raster - One channel.
 * @param row - Row, pixel centers at whole numbers.
 * @param column - Column likewise.
 * @returns The value, in the raster's unit.
 */
export function samplePixel({ width, height, data }: Raster, row: number, column: number): number {
  const y = Math.min(height - 1, Math.max(0, row));
  const x = Math.min(width - 1, Math.max(0, column));
  const top = Math.min(height - 2, Math.floor(y));
  const left = Math.min(width - 2, Math.floor(x));
  if (top < 0 || left < 0) return data[Math.round(y) * width + Math.round(x)]!;
  const down = y - top;
  const across = x - left;
  const i = top * width + left;
  const upper = data[i]! * (1 - across) + data[i + 1]! * across;
  const lower = data[i + width]! * (1 - across) + data[i + width + 1]! * across;
  return upper * (1 - down) + lower * down;
}

/** Red, green and blue of a three-channel raster between pixels, likewise. */
export function sampleColor(raster: Raster, row: number, column: number): [number, number, number] {
  const y = Math.min(raster.height - 1, Math.max(0, row));
  const x = Math.min(raster.width - 1, Math.max(0, column));
  const top = Math.floor(y);
  const left = Math.floor(x);
  const down = y - top;
  const across = x - left;
  const below = top + 1 < raster.height ? 3 * raster.width : 0;
  const beside = left + 1 < raster.width ? 3 : 0;
  const i = 3 * (top * raster.width + left);
  const { data } = raster;
  const channel = (c: number) => {
    const upper = data[i + c]! * (1 - across) + data[i + beside + c]! * across;
    const lower = data[i + below + c]! * (1 - across) + data[i + below + beside + c]! * across;
    return upper * (1 - down) + lower * down;
  };
  return [channel(0), channel(1), channel(2)];
}
