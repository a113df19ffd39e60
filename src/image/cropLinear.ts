import { SRGB_8BIT_TO_LINEAR } from '../optics/srgbTransfer';
import { LUMINANCE_WEIGHTS, luminance } from './luminance';
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
  refuseOutside(photo, box);
  if (photo.merging) return mergeShots(photo, photo.merging, box);
  const { row, column, width, height } = box;
  const { rgba, widthPx } = photo;
  const data = new Float32Array(3 * width * height);
  let to = 0;
  for (let y = row; y < row + height; y++) {
    let from = 4 * (widthPx * y + column);
    for (let x = 0; x < width; x++, from += 4, to += 3) {
      data[to] = SRGB_8BIT_TO_LINEAR[rgba[from]!]!;
      data[to + 1] = SRGB_8BIT_TO_LINEAR[rgba[from + 1]!]!;
      data[to + 2] = SRGB_8BIT_TO_LINEAR[rgba[from + 2]!]!;
    }
  }
  return { width, height, channels: 3, data };
}

/** Relative luminance of each 8-bit sRGB code of a channel that stands alone. */
const [OF_RED, OF_GREEN, OF_BLUE] = LUMINANCE_WEIGHTS.map((weight) =>
  Float64Array.from(SRGB_8BIT_TO_LINEAR, (value) => weight * value),
) as [Float64Array, Float64Array, Float64Array];

/**
 * Relative luminance of a rectangle of a photo: what `cropLinear` and `luminance` give, in one pass over a third of the
 * memory.
 *
 * @param photo - The whole photo.
 * @param box - Rectangle inside the photo, whole pixels.
 * @returns One-channel raster of the box's size.
 * @throws RangeError when the box reaches outside the photo.
 */
export function cropLuminance(photo: Photo, box: Box): Raster {
  refuseOutside(photo, box);
  if (photo.merging) return luminance(mergeShots(photo, photo.merging, box));
  const { row, column, width, height } = box;
  const { rgba, widthPx } = photo;
  const data = new Float32Array(width * height);
  for (let y = 0, to = 0; y < height; y++) {
    let from = 4 * (widthPx * (row + y) + column);
    for (let x = 0; x < width; x++, from += 4, to++) {
      data[to] = OF_RED[rgba[from]!]! + OF_GREEN[rgba[from + 1]!]! + OF_BLUE[rgba[from + 2]!]!;
    }
  }
  return { width, height, channels: 1, data };
}

/** @throws RangeError when the box reaches outside the photo. */
export function refuseOutside(photo: Photo, { row, column, width, height }: Box): void {
  if (row < 0 || column < 0 || row + height > photo.heightPx || column + width > photo.widthPx) {
    throw new RangeError('The crop reaches outside the photo.');
  }
}
