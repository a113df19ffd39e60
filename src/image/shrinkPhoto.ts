import { SRGB_8BIT_TO_LINEAR } from '../optics/srgbTransfer';
import type { Photo } from './photo';
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
 * @returns RGB raster, 0 to 1, and the block's side.
 */
export function shrinkPhoto(photo: Photo, longestSidePx: number): ShrunkPhoto {
  const factor = Math.max(1, Math.ceil(Math.max(photo.widthPx, photo.heightPx) / longestSidePx));
  const width = Math.floor(photo.widthPx / factor);
  const height = Math.floor(photo.heightPx / factor);
  const data = new Float32Array(3 * width * height);
  const { rgba } = photo;
  const linear = Float64Array.from(SRGB_8BIT_TO_LINEAR, (value) => value / (factor * factor));
  for (let y = 0; y < height * factor; y++) {
    let to = 3 * width * Math.floor(y / factor);
    let from = 4 * photo.widthPx * y;
    for (let column = 0; column < width; column++, to += 3) {
      let [red, green, blue] = [0, 0, 0];
      for (let i = 0; i < factor; i++, from += 4) {
        red += linear[rgba[from]!]!;
        green += linear[rgba[from + 1]!]!;
        blue += linear[rgba[from + 2]!]!;
      }
      data[to]! += red;
      data[to + 1]! += green;
      data[to + 2]! += blue;
    }
  }
  return { raster: { width, height, channels: 3, data }, factor };
}
