import type { Mask, Raster } from '../image/raster';
import { clippedFrom } from './clippedFrom';

/**
 * Pixels at which the camera was at its limit in any channel.
 *
 * @param picture - RGB raster in linear light.
 * @returns Mask of equal size.
 */
export function clippedPixels(picture: Raster): Mask {
  const limit = clippedFrom(picture);
  const data = new Uint8Array(picture.width * picture.height);
  for (let i = 0; i < data.length; i++) {
    const most = Math.max(picture.data[3 * i]!, picture.data[3 * i + 1]!, picture.data[3 * i + 2]!);
    data[i] = most >= limit ? 1 : 0;
  }
  return { width: picture.width, height: picture.height, data };
}
