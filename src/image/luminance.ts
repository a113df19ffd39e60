import type { Raster } from './raster';

/** Weights of linear red, green and blue in relative luminance (IEC 61966-2-1, ITU-R BT.709). */
export const LUMINANCE_WEIGHTS = [0.2126, 0.7152, 0.0722] as const;

/**
 * Weighted sum of the three channels.
 *
 * @param raster - RGB raster in linear light.
 * @param weights - One factor per channel; relative luminance when left out.
 * @returns One-channel raster of equal size.
 */
export function luminance(
  raster: Raster,
  weights: readonly [number, number, number] = LUMINANCE_WEIGHTS,
): Raster {
  const { width, height } = raster;
  const data = new Float32Array(width * height);
  const [r, g, b] = weights;
  for (let i = 0, j = 0; i < data.length; i++, j += 3) {
    data[i] = r * raster.data[j]! + g * raster.data[j + 1]! + b * raster.data[j + 2]!;
  }
  return { ...raster, channels: 1, data };
}
