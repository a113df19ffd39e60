import { cropLinear } from './cropLinear';
import type { Photo } from './photo';
import type { Box, Raster } from './raster';

/**
 * Cuts a rectangle out of a photo, brings it to linear light and averages square blocks.
 *
 * @param photo - The whole photo.
 * @param box - Rectangle inside the photo; rows and columns that do not fill a block are left out.
 * @param factor - Side of a block, pixels, ≥ 1.
 * @returns RGB raster; its pixel (r, c) is the mean of the block that starts at (r, c) · factor in the box.
 */
export function cropReduced(photo: Photo, box: Box, factor: number): Raster {
  const crop = cropLinear(photo, box);
  if (factor === 1) return crop;
  const width = Math.floor(box.width / factor);
  const height = Math.floor(box.height / factor);
  const data = new Float32Array(3 * width * height);
  const share = 1 / (factor * factor);
  for (let y = 0; y < height * factor; y++) {
    for (let x = 0; x < width * factor; x++) {
      const from = 3 * (y * crop.width + x);
      const to = 3 * (Math.floor(y / factor) * width + Math.floor(x / factor));
      for (let c = 0; c < 3; c++) data[to + c]! += share * crop.data[from + c]!;
    }
  }
  return { ...crop, width, height, data };
}
