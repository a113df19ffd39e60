import type { Raster } from '../image/raster';

/** From this share of the camera's limit on a channel counts as clipped. */
const SHARE = 0.97;

/**
 * Light from which a pixel counts as clipped.
 *
 * @returns In the raster's unit: 0.97 for a single photo, more where a darker shot was merged.
 */
export function clippedFrom({ clipLevel = 1 }: Raster): number {
  return SHARE * clipLevel;
}
