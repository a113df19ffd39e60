import { luminance } from '../image/luminance';
import { nthSmallest } from '../image/nthSmallest';
import type { Raster } from '../image/raster';

/** The bright parts of the picture: ninetieth percentile; and the brightest, without the highlights. */
const BRIGHT = { quantile: 0.9, least: 0.06 };
/** Radiance of the ball's highlight under which the glints of dull stones drown in the steps of an 8-bit photo. */
const LEAST_HIGHLIGHT = 0.15;

/**
 * Tells whether a photo is too dark to measure.
 *
 * In 8-bit sRGB a step is 2 % of the light at 0.1, 5 % at 0.02 and 15 % at 0.003 (IEC 61966-2-1).
 *
 * @param small - RGB raster of the whole photo in linear light, 1 = the camera's limit.
 * @param highlight - Radiance of the lamp's image in the ball; null when there is no ball.
 * @returns True when neither the picture's bright parts nor the ball's highlight reach far enough.
 */
export function tooDark(small: Raster, highlight: number | null): boolean {
  const light = luminance(small).data;
  const bright = nthSmallest(light, Math.floor(BRIGHT.quantile * (light.length - 1))) ?? 0;
  return bright < BRIGHT.least && (highlight === null || highlight < LEAST_HIGHLIGHT);
}
