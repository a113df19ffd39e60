import type { Mask, Raster } from '../image/raster';
import { blurGaussian } from './blurGaussian';

/** A stone's surface with its shading taken off. */
export interface SurfaceRelief {
  /** ln of luminance less its local mean; 0 outside the stone. */
  readonly detail: Raster;
  /** Usual size of the detail: 1.48 × median absolute value on the stone. */
  readonly usual: number;
}

const FLOOR = 0.002;

/**
 * Takes the slow shading off a stone, leaving pattern, pits and fractures as relative light.
 *
 * @param light - One-channel luminance in linear light.
 * @param mask - The stone.
 * @param sigmaPx - Standard deviation of the local mean, pixels; larger than any pit.
 * @returns Detail in ln units.
 */
export function surfaceRelief(light: Raster, mask: Mask, sigmaPx: number): SurfaceRelief {
  const { width, height } = light;
  const logLight = Float64Array.from(light.data, (value) => Math.log(Math.max(value, 0) + FLOOR));
  const sums = logLight.map((value, i) => value * mask.data[i]!);
  const shares = Float64Array.from(mask.data);
  blurGaussian(sums, width, height, sigmaPx);
  blurGaussian(shares, width, height, sigmaPx);
  const data = Float32Array.from(logLight, (value, i) =>
    mask.data[i] ? value - sums[i]! / Math.max(1e-6, shares[i]!) : 0,
  );
  const sizes = data
    .filter((_, i) => mask.data[i] === 1)
    .map(Math.abs)
    .sort();
  return { detail: { width, height, channels: 1, data }, usual: 1.4826 * (sizes[sizes.length >> 1] ?? 0) };
}
