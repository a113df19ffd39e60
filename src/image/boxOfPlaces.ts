import type { Box } from './raster';

/**
 * The smallest rectangle of whole pixels around some places, cut off at the photo's edge.
 *
 * @param places - Rows and columns, may be fractional or beyond the photo; at least one.
 * @param marginPx - Kept around them, pixels, ≥ 0.
 * @param photo - Size of the photo.
 * @returns A box inside the photo, at least one pixel wide and high.
 */
export function boxOfPlaces(
  places: readonly (readonly [number, number])[],
  marginPx: number,
  photo: { readonly widthPx: number; readonly heightPx: number },
): Box {
  const rows = places.map(([row]) => row);
  const columns = places.map(([, column]) => column);
  const top = clamp(Math.floor(Math.min(...rows) - marginPx), 0, photo.heightPx - 1);
  const left = clamp(Math.floor(Math.min(...columns) - marginPx), 0, photo.widthPx - 1);
  const bottom = clamp(Math.ceil(Math.max(...rows) + marginPx), top, photo.heightPx - 1);
  const right = clamp(Math.ceil(Math.max(...columns) + marginPx), left, photo.widthPx - 1);
  return { row: top, column: left, width: right - left + 1, height: bottom - top + 1 };
}

const clamp = (at: number, least: number, most: number) => Math.min(most, Math.max(least, at));
