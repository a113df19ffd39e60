import type { Mask } from './raster';

/**
 * The mask of all pixels that meet a condition.
 *
 * @param width - Columns.
 * @param height - Rows.
 * @param isInside - Asked once for each pixel, row by row, by its place in the row-major order.
 */
export function maskWhere(width: number, height: number, isInside: (pixel: number) => boolean): Mask {
  const data = new Uint8Array(width * height);
  for (let i = 0; i < data.length; i++) if (isInside(i)) data[i] = 1;
  return { width, height, data };
}
