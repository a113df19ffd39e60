import { SRGB_8BIT_TO_LINEAR } from '../optics/srgbTransfer';
import { cropLinear, refuseOutside } from './cropLinear';
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
  if (factor === 1) return cropLinear(photo, box);
  if (photo.merging) return reduced(cropLinear(photo, box), factor);
  refuseOutside(photo, box);
  const width = Math.floor(box.width / factor);
  const height = Math.floor(box.height / factor);
  const data = new Float32Array(3 * width * height);
  const { rgba } = photo;
  const shares = Float64Array.from(SRGB_8BIT_TO_LINEAR, (value) => value / (factor * factor));
  for (let y = 0; y < height * factor; y++) {
    let to = 3 * width * Math.floor(y / factor);
    let from = 4 * (photo.widthPx * (box.row + y) + box.column);
    for (let column = 0; column < width; column++, to += 3) {
      let red = 0;
      let green = 0;
      let blue = 0;
      for (let i = 0; i < factor; i++, from += 4) {
        red += shares[rgba[from]!]!;
        green += shares[rgba[from + 1]!]!;
        blue += shares[rgba[from + 2]!]!;
      }
      data[to]! += red;
      data[to + 1]! += green;
      data[to + 2]! += blue;
    }
  }
  return { width, height, channels: 3, data };
}

function reduced(crop: Raster, factor: number): Raster {
  const width = Math.floor(crop.width / factor);
  const height = Math.floor(crop.height / factor);
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
