import type { Mask, Raster } from '../image/raster';

/** From this share of full scale on a channel counts as clipped. */
export const CLIPPED_FROM = 0.97;

/**
 * Pixels at which the camera was at its limit in any channel.
 *
 * @param picture - RGB raster in linear light.
 * @returns Mask of equal size.
 */
export function clippedPixels(picture: Raster): Mask {
  const data = new Uint8Array(picture.width * picture.height);
  for (let i = 0; i < data.length; i++) {
    const most = Math.max(picture.data[3 * i]!, picture.data[3 * i + 1]!, picture.data[3 * i + 2]!);
    data[i] = most >= CLIPPED_FROM ? 1 : 0;
  }
  return { width: picture.width, height: picture.height, data };
}
