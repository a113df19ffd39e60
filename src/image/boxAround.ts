import type { Box } from './raster';

/**
 * The rectangle of whole pixels around a center, cut off at the picture's edge.
 *
 * @param center - Row and column, may be fractional.
 * @param reachPx - Distance from the center to each side, pixels, > 0.
 * @param picture - Size of the picture, pixels.
 * @returns A box inside the picture, at least one pixel wide and high.
 */
export function boxAround(
  center: { readonly row: number; readonly column: number },
  reachPx: number,
  picture: { readonly width: number; readonly height: number },
): Box {
  const top = clamp(Math.floor(center.row - reachPx), 0, picture.height - 1);
  const left = clamp(Math.floor(center.column - reachPx), 0, picture.width - 1);
  const bottom = clamp(Math.ceil(center.row + reachPx), top, picture.height - 1);
  const right = clamp(Math.ceil(center.column + reachPx), left, picture.width - 1);
  return { row: top, column: left, width: right - left + 1, height: bottom - top + 1 };
}

const clamp = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));
