import type { HighlightFit } from './highlightFit';
import { type HighlightWindow, type LobeOptics, slopeField } from './highlightModel';
import { ringMeans } from './ringMeans';

/** Mean over rings around a highlight, shares of a perfect polish. */
export interface HighlightProfile {
  /** Distance from the center in radii of the lamp's image. */
  readonly distance: readonly number[];
  readonly measured: readonly number[];
  readonly model: readonly number[];
}

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
  const field = slopeField(fit.shape, optics, window.stepPx);
  const slopes = Array.from(window.values, (_, i) => {
    const dy = Math.floor(i / window.width) - fit.shape.row;
    const dx = (i % window.width) - fit.shape.column;
    return Math.hypot(...field(dy, dx));
  });
  const places = slopes.flatMap((distance, i) =>
    window.use[i] === 0
      ? []
      : [
          {
            distance,
            measured: (window.values[i]! - fit.body[i]!) / fit.amplitude,
            model: fit.lobe[i]!,
          },
        ],
  );
  return ringMeans(places);
}
