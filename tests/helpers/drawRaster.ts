import type { Raster } from '../../src/image/raster';

/** A one-channel picture from rows of values. */
export function drawRaster(...rows: number[][]): Raster {
  const width = rows[0]?.length ?? 0;
  if (rows.some((row) => row.length !== width)) throw new Error('Draw every row equally long.');
  return { width, height: rows.length, channels: 1, data: Float32Array.from(rows.flat()) };
}
