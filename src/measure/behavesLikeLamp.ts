import type { Raster } from '../image/raster';
import { colorSpread } from './colorSpread';
import type { HighlightLight } from './highlightScene';
import { CURVATURE_PRIOR, type StoneHighlight } from './stoneHighlight';

/**
 * A true highlight's strength differs among the color channels by at most so much of its mean; not asked of
 * lobes so low that the stone's own shading is in the way, since those are fitted in the mix without its color.
 */
const COLOR_SPREAD = { most: 0.28, leastShare: 0.05 };
/** On a stone of strong colors a patch beside the lamp's image may add so much of the pattern's own difference. */
const PATTERN_SHARE = 0.5;
/** The pattern around a highlight, as a robust standard deviation, is at most this share of a high or low lobe's height. */
const PATTERN = { high: 0.3, low: 0.22 };
/** A low lobe on a spot this much flatter than the stone, ln units, is the stone's own shading. */
const SHADING = { share: 0.2, curvature: -0.45 };
/** A spot bent this much more than the stone, ln units, is a glint on a rim or a grain, however high its light. */
const SHARPEST = 1.9;
/** A mirror's light is so high that little of it can be a patch of color. */
const MIRROR = { fromShare: 0.5, colorSpread: 0.2 };
/** A lobe lower than this share of the stone's own light beside it can be made by the stone's shading as well. */
const LEAST_CONTRAST = 0.5;
/** A low lobe on a spot bent this much more than the stone, or this unevenly, ln units, is a glint on a rim or ridge. */
const GLINT = { share: 0.4, curvature: 1.1, stretch: 1.1, lowStretch: 0.8 };

/** What is known of a stone beside its highlight. */
export interface StoneOwn {
  /** Radius of the silhouette, pixels. */
  readonly radiusPx: number;
  /** How unequal the stone's pattern is among the channels, as `patternSpread` gives it. */
  readonly patternSpread: number;
}

/**
 * Whether color, curvature and pattern allow a spot to be the lamp's image on this stone.
 *
 * @param stone - RGB raster of the stone's crop, lamp white = (1, 1, 1).
 * @param found - The fitted spot.
 * @param light - Lamp and camera.
 * @param own - What is known of the stone.
 */
export function behavesLikeLamp(
  stone: Raster,
  { fit, problem: { window } }: StoneHighlight,
  light: HighlightLight,
  { radiusPx, patternSpread }: StoneOwn,
): boolean {
  const share = 1 / (1 + (fit.shape.alpha / light.sourceSlope) ** 2);
  const height = fit.amplitude * (Math.max(...fit.lobe) - Math.min(...fit.lobe));
  if (fit.residualSd > (share < GLINT.share ? PATTERN.low : PATTERN.high) * height) return false;
  const curved = fit.shape.mean + Math.log(radiusPx) - CURVATURE_PRIOR.mean;
  if (curved > SHARPEST) return false;
  const streak = Math.hypot(fit.shape.stretch, fit.shape.skew);
  const mostStretch = share < COLOR_SPREAD.leastShare ? GLINT.lowStretch : GLINT.stretch;
  if (share < GLINT.share && (curved > GLINT.curvature || streak > mostStretch)) return false;
  const row = Math.round(fit.shape.row);
  const body = fit.body[row * window.width + Math.round(fit.shape.column)] ?? 0;
  if (share < SHADING.share && (curved < SHADING.curvature || height < LEAST_CONTRAST * body)) return false;
  const usual = share > MIRROR.fromShare ? MIRROR.colorSpread : COLOR_SPREAD.most;
  const most = Math.max(usual, PATTERN_SHARE * patternSpread);
  return share < COLOR_SPREAD.leastShare || colorSpread(stone, window, fit) < most;
}
