import type { Raster } from '../image/raster';

/** Least cosine used: nearer the rim a stone's surface is seen too slantwise to undo it. */
const LEAST_COSINE = 0.5;

/**
 * Cosine between surface and camera for a stone that curves like a ball at its rim and is flat in its middle.
 *
 * @param depth - Distance of each pixel to the outline, pixels; 0 outside.
 * @returns The cosine at a pixel's index, 0.5 to 1.
 */
export function domeCosine(depth: Raster): (index: number) => number {
  let radius = 1;
  for (const value of depth.data) radius = Math.max(radius, value);
  return (index) => {
    const fromMiddle = 1 - Math.min(1, depth.data[index]! / radius);
    return Math.sqrt(Math.max(LEAST_COSINE ** 2, 1 - fromMiddle * fromMiddle));
  };
}
