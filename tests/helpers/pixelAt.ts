import type { Photo } from '../../src/image/photo';

/** Red, green and blue of one pixel, 0 to 255. */
export function pixelAt({ rgba, widthPx }: Photo, row: number, column: number): number[] {
  const start = 4 * (row * widthPx + column);
  return [...rgba.subarray(start, start + 3)];
}
