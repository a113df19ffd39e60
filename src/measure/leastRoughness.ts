import { luminance } from '../image/luminance';
import type { Mask, Raster } from '../image/raster';
import { blurGaussian } from './blurGaussian';

/** What the lamp's image is smoothed by before its height is read, so that a single bright pixel proves nothing, pixels. */
const SMOOTHING_PX = 1;
/** A lamp's image on a ridge is smaller than the camera's blur and looks lower than it is, at most so many times. */
const LOWERED = 2;

/**
 * Least roughness that a stone without a readable highlight can have.
 *
 * Somewhere on a closed convex stone the surface mirrors the lamp to the camera, and there the lobe is
 * f = a² / (a² + α²) of a perfect polish high, whatever the curvature. As nowhere on the stone is more light than h,
 * α ≥ a · √(1 / f − 1) with f = h / amplitude. Pattern and body only make the bound lower.
 *
 * @param stone - RGB crop in linear light, lamp white = (1, 1, 1).
 * @param mask - The stone, its rim left out.
 * @param sourceSlope - Half-vector radius of the lamp.
 * @returns GGX roughness by the radiance of a perfect polish, 0 when the light allows a mirror.
 */
export function leastRoughness(
  stone: Raster,
  mask: Mask,
  sourceSlope: number,
): (amplitude: number) => number {
  const { width, height } = stone;
  const light = Float64Array.from(luminance(stone).data);
  for (let i = 0; i < light.length; i++) light[i]! *= mask.data[i]!;
  const inside = Float64Array.from(mask.data);
  blurGaussian(light, width, height, SMOOTHING_PX);
  blurGaussian(inside, width, height, SMOOTHING_PX);
  let highest = 0;
  for (let i = 0; i < light.length; i++) {
    if (mask.data[i]) highest = Math.max(highest, light[i]! / Math.max(inside[i]!, 1e-6));
  }
  return (amplitude) => {
    const share = (LOWERED * highest) / amplitude;
    return share >= 1 ? 0 : sourceSlope * Math.sqrt(1 / share - 1);
  };
}
