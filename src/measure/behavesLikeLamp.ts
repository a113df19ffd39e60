import type { Raster } from '../image/raster';
import { colorSpread } from './colorSpread';
import { CURVATURE_PRIOR, type HighlightLight, type StoneHighlight } from './stoneHighlight';

/**
 * A true highlight's strength differs among the color channels by at most so much of its mean; not asked of
 * lobes so low that the stone's own shading is in the way, since those are fitted in the mix without its color.
 */
const COLOR_SPREAD = { most: 0.28, leastShare: 0.05 };
/** The pattern around a highlight, as a robust standard deviation, is at most this share of a high or low lobe's height. */
const PATTERN = { high: 0.3, low: 0.22 };
/** A low lobe on a spot this much flatter than the stone, ln units, is the stone's own shading. */
const SHADING = { share: 0.2, curvature: -0.45 };
/** A lobe lower than this share of the stone's own light beside it can be made by the stone's shading as well. */
const LEAST_CONTRAST = 0.5;
/** A low lobe on a spot bent this much more than the stone, or this unevenly, ln units, is a glint on a rim or ridge. */
const GLINT = { share: 0.4, curvature: 1.1, stretch: 1.1, lowStretch: 0.8 };

/**
 * Whether color, curvature and pattern allow a spot to be the lamp's image on this stone.
 *
 * @param stone - RGB raster of the stone's crop, lamp white = (1, 1, 1).
 * @param found - The fitted spot.
 * @param light - Lamp and camera.
 * @param radiusPx - Radius of the stone's silhouette, pixels.
 */
export function behavesLikeLamp(
  stone: Raster,
  { fit, problem: { window } }: StoneHighlight,
  light: HighlightLight,
  radiusPx: number,
): boolean {
  const share = 1 / (1 + (fit.shape.alpha / light.sourceSlope) ** 2);
  const height = fit.amplitude * (Math.max(...fit.lobe) - Math.min(...fit.lobe));
  if (fit.residualSd > (share < GLINT.share ? PATTERN.low : PATTERN.high) * height) return false;
  const curved = fit.shape.mean + Math.log(radiusPx) - CURVATURE_PRIOR.mean;
  const streak = Math.hypot(fit.shape.stretch, fit.shape.skew);
  const mostStretch = share < COLOR_SPREAD.leastShare ? GLINT.lowStretch : GLINT.stretch;
  if (share < GLINT.share && (curved > GLINT.curvature || streak > mostStretch)) return false;
  const row = Math.round(fit.shape.row);
  const body = fit.body[row * window.width + Math.round(fit.shape.column)] ?? 0;
  if (share < SHADING.share && (curved < SHADING.curvature || height < LEAST_CONTRAST * body)) return false;
  return share < COLOR_SPREAD.leastShare || colorSpread(stone, window, fit) < COLOR_SPREAD.most;
}
