import type { HighlightFit } from './highlightFit';
import { type HighlightWindow, type LobeOptics, slopeField } from './highlightModel';

/** Mean over rings around a highlight, shares of a perfect polish. */
export interface HighlightProfile {
  /** Distance from the center in radii of the lamp's image. */
  readonly distance: readonly number[];
  readonly measured: readonly number[];
  readonly model: readonly number[];
}

const RINGS = 24;

/**
 * Averages a highlight over rings of equal surface slope, the stone's own light taken off.
 *
 * @param window - The window of the fit.
 * @param optics - Lamp and camera.
 * @param fit - The fit.
 * @returns Up to 24 rings from the center outward; rings without a pixel are left out.
 */
export function highlightProfile(
  window: HighlightWindow,
  optics: LobeOptics,
  fit: HighlightFit,
): HighlightProfile {
  const field = slopeField(fit.shape, optics.sourceSlope, window.stepPx);
  const slopes = Array.from(window.values, (_, i) => {
    const dy = Math.floor(i / window.width) - fit.shape.row;
    const dx = (i % window.width) - fit.shape.column;
    return Math.hypot(field.right(dy, dx), field.down(dy, dx));
  });
  const farthest = slopes.reduce((most, slope, i) => (window.use[i] === 0 ? most : Math.max(most, slope)), 1);
  const sums = Array.from({ length: RINGS }, () => ({ count: 0, distance: 0, measured: 0, model: 0 }));
  slopes.forEach((slope, i) => {
    if (window.use[i] === 0) return;
    const ring = sums[Math.min(RINGS - 1, Math.floor((RINGS * slope) / farthest))]!;
    ring.count++;
    ring.distance += slope;
    ring.measured += (window.values[i]! - fit.body[i]!) / fit.amplitude;
    ring.model += fit.lobe[i]!;
  });
  const filled = sums.filter((ring) => ring.count > 0);
  return {
    distance: filled.map((ring) => ring.distance / ring.count),
    measured: filled.map((ring) => ring.measured / ring.count),
    model: filled.map((ring) => ring.model / ring.count),
  };
}
