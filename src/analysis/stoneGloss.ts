import { bodyReflectance } from '../measure/bodyReflectance';
import { refit } from '../measure/highlightFit';
import { highlightProfile } from '../measure/highlightProfile';
import { roughnessInterval } from '../measure/roughnessInterval';
import { shrinkMask } from '../measure/shrinkMask';
import {
  type HighlightLight,
  SEARCH_INDEX,
  type StoneHighlight,
  stoneHighlight,
} from '../measure/stoneHighlight';
import { fresnelReflectance } from '../optics/fresnelReflectance';
import type { HighlightReport, RoughnessAtIndex } from './report';
import type { StoneCrop } from './stoneCrop';

/** Refractive indices at which the roughness is fitted; the grading interpolates between them. */
export const INDEX_KNOTS = [1.43, SEARCH_INDEX, 1.65, 1.77] as const;
/** The stone's rim, left out because the outline may be off by as much: share of the stone's radius. */
const RIM_SHARE = 0.05;

/**
 * Measures the lamp's image on a stone for a range of refractive indices.
 *
 * @param crop - The stone.
 * @param light - Lamp and camera, in crop pixels.
 * @returns The highlight in photo pixels, or null when the stone shows none.
 */
export function stoneGloss(crop: StoneCrop, light: HighlightLight): HighlightReport | null {
  const area = crop.mask.data.reduce((sum, inside) => sum + inside, 0);
  const rimPx = Math.max(1, Math.round(RIM_SHARE * Math.sqrt(area / Math.PI)));
  const found = stoneHighlight(crop.stone, shrinkMask(crop.mask, rimPx), light);
  if (!found) return null;
  const { fit, problem } = found;
  const { window } = problem;
  const interval = roughnessInterval(problem, fit);
  const below = interval.low / fit.shape.alpha;
  const above = interval.high / fit.shape.alpha;
  const byIndex = INDEX_KNOTS.map((n): RoughnessAtIndex => {
    const alpha = n === SEARCH_INDEX ? fit.shape.alpha : refitted(found, light, n);
    return { n, alpha, alphaLow: alpha * below, alphaHigh: Math.min(1, alpha * above) };
  });
  const [row, column] = crop.toPhoto(
    window.row + fit.shape.row * window.stepPx,
    window.column + fit.shape.column * window.stepPx,
  );
  return {
    row,
    column,
    byIndex,
    bodyReflectance: bodyReflectance(crop.stone, window, fit, light),
    profile: highlightProfile(window, problem.optics, fit),
  };
}

/** Roughness when a perfect polish would mirror as much as that index does. */
function refitted({ fit, problem }: StoneHighlight, light: HighlightLight, n: number): number {
  const amplitude = light.lampRadiance * fresnelReflectance(n, light.half[2]);
  return refit({ ...problem, prior: { ...problem.prior, amplitude } }, fit, null).shape.alpha;
}
