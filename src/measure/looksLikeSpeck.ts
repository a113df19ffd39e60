import { refit } from './highlightFit';
import { lobeHalfWidth } from './lobeHalfWidth';
import type { StoneHighlight } from './stoneHighlight';

/** Lobes higher than this share of a perfect polish have a flat top and steep edges by right. */
const BELL_SHAPED_BELOW = 0.7;
/** Roughness of the disc that stands for a speck, in lamp radii: an edge as sharp as the camera shows. */
const SHARP = 0.02;
/**
 * A spot is a speck unless a sharp disc of any height leaves over more than so many times what the lobe does. On the
 * development scenes true lobes were at 1.3 and above, bands, orbs and pale clasts at 1.2 and below.
 */
const LEAST_GAIN = 1.2;

/**
 * Whether a spot is a pale speck of mineral and no highlight.
 *
 * A lobe that is lower than a mirror's must be bell-shaped, with the skirt that its roughness brings; a speck is as
 * low or as high as its color makes it and ends sharply. A sharp disc of the spot's own height and width is fitted
 * instead of the lobe.
 *
 * @param found - The fitted spot.
 */
export function looksLikeSpeck({ fit, problem }: StoneHighlight): boolean {
  const { optics, prior } = problem;
  const a = optics.sourceSlope;
  if (1 / (1 + (fit.shape.alpha / a) ** 2) > BELL_SHAPED_BELOW) return false;
  const amplitude = fit.amplitude * fit.lobe.reduce((most, value) => Math.max(most, value), 0);
  const mean = fit.shape.mean + Math.log(a / lobeHalfWidth(fit.shape.alpha, a));
  const speck = {
    ...problem,
    prior: { ...prior, amplitude, amplitudeSd: 1, curvatureMean: mean, curvatureSd: 1 },
  };
  const disc = refit(speck, { ...fit, amplitude, shape: { ...fit.shape, mean } }, SHARP * a);
  return disc.cost < LEAST_GAIN * fit.cost;
}
