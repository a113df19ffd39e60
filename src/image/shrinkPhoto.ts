import { cropReduced } from './cropReduced';
import { mergeShots } from './mergeShots';
import type { Merging, Photo } from './photo';
import type { Raster } from './raster';

/** A photo reduced in linear light, and by how much. */
export interface ShrunkPhoto {
  readonly raster: Raster;
  /** One pixel of the raster is the mean of `factor` × `factor` photo pixels. */
  readonly factor: number;
}

/**
 * Reduces a photo to a small picture in linear light by averaging square blocks; rows and columns
 * that do not fill a block are left out.
 *
 * @param photo - The whole photo.
 * @param longestSidePx - Upper bound of the result's longer side, pixels, ≥ 1.
 * @returns RGB raster, 0 to 1, beyond 1 where a darker shot of the scene shows more, and the block's side.
 */
export function shrinkPhoto(photo: Photo, longestSidePx: number): ShrunkPhoto {
  const factor = Math.max(1, Math.ceil(Math.max(photo.widthPx, photo.heightPx) / longestSidePx));
  if (photo.merging) return { raster: shrinkMerged(photo, photo.merging, factor), factor };
  const whole = { row: 0, column: 0, width: photo.widthPx, height: photo.heightPx };
  return { raster: cropReduced(photo, whole, factor), factor };
}

/** The same for merged shots, one row of blocks at a time: the whole photo as floats would not fit a phone. */
function shrinkMerged(photo: Photo, merging: Merging, factor: number): Raster {
  const width = Math.floor(photo.widthPx / factor);
  const height = Math.floor(photo.heightPx / factor);
  const data = new Float32Array(3 * width * height);
  const share = 1 / (factor * factor);
  for (let row = 0; row < height; row++) {
    const band = mergeShots(photo, merging, {
      row: row * factor,
      column: 0,
      width: width * factor,
      height: factor,
    });
    for (let i = 0; i < band.data.length; i += 3) {
      const to = 3 * (row * width + Math.floor(((i / 3) % band.width) / factor));
      for (let c = 0; c < 3; c++) data[to + c]! += share * band.data[i + c]!;
    }
  }
  return { width, height, channels: 3, data, clipLevel: merging.clipLevel };
}
