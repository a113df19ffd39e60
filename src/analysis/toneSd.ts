import { toneUncertainty } from '../optics/toneUncertainty';
import type { HighlightReport } from './report';

/** Half of a 90 % interval of a normal distribution, standard deviations. */
const NORMAL_90 = 1.645;

/**
 * Spread of a highlight's height over the ball's when nobody knows the curve that the camera laid over its light.
 *
 * Nine cameras in ten are taken to stay within the typical contrast.
 *
 * @param highlight - As read with the plain sRGB curve.
 * @param reference - Height of the lamp's image in the ball, 1 = the camera's limit.
 * @returns Standard deviation of the height's logarithm, 0 or more.
 */
export function toneSd({ levels }: HighlightReport, reference: number): number {
  if (!levels || !(levels.height > 0 && reference > 0)) return 0;
  return toneUncertainty({ ...levels, reference }) / NORMAL_90;
}
