import { SRGB_8BIT_TO_LINEAR } from '../optics/srgbTransfer';
import { mergeShots } from './mergeShots';
import type { Photo } from './photo';
import type { Box, Raster } from './raster';

/**
 * Cuts a rectangle out of a photo and brings it to linear light.
 *
 * @param photo - The whole photo.
 * @param box - Rectangle inside the photo, whole pixels.
 * @returns RGB raster of the box's size, 0 to 1; beyond 1 where a darker shot of the scene shows more.
 * @throws RangeError when the box reaches outside the photo.
 */
export function cropLinear(photo: Photo, box: Box): Raster {
  const { row, column, width, height } = box;
  if (row < 0 || column < 0 || row + height > photo.heightPx || column + width > photo.widthPx) {
    throw new RangeError('The crop reaches outside the photo.');
  }
  if (photo.merging) return mergeShots(photo, photo.merging, box);
  const data = new Float32Array(3 * width * height);
  let to = 0;
  for (let y = row; y < row + height; y++) {
    let from = 4 * (photo.widthPx * y + column);
    for (let x = 0; x < width; x++, from += 4, to += 3) {
      data[to] = SRGB_8BIT_TO_LINEAR[photo.rgba[from]!]!;
      data[to + 1] = SRGB_8BIT_TO_LINEAR[photo.rgba[from + 1]!]!;
      data[to + 2] = SRGB_8BIT_TO_LINEAR[photo.rgba[from + 2]!]!;
    }
  }
  return { width, height, channels: 3, data };
}
