import type { Mask, Raster } from '../image/raster';
import type { Blur } from './stoneSurface';

/** Least share of the blur's weight on the mask for the mean to mean anything. */
const LEAST_SHARE = 0.02;

/**
 * Mean of a picture around each pixel of a mask, weighted by a Gaussian, over the mask's pixels only.
 *
 * @param raster - One channel.
 * @param mask - Pixels that count.
 * @param sigmaPx - Standard deviation, pixels, > 0.
 * @param blur - Gaussian blur.
 * @returns The means; the mean of the whole mask where nothing of it is near.
 */
export function maskedBlur(raster: Raster, mask: Mask, sigmaPx: number, blur: Blur): Raster {
  const { width, height } = raster;
  const sums = blur({ ...raster, data: raster.data.map((value, i) => value * mask.data[i]!) }, sigmaPx);
  const shares = blur({ width, height, channels: 1, data: Float32Array.from(mask.data) }, sigmaPx);
  const count = mask.data.reduce((sum, inside) => sum + inside, 0);
  const all = raster.data.reduce((sum, value, i) => sum + value * mask.data[i]!, 0) / Math.max(1, count);
  const data = sums.data.map((sum, i) => {
    const share = shares.data[i]!;
    return share > LEAST_SHARE ? sum / share : all;
  });
  return { width, height, channels: 1, data };
}
