import type { Raster } from '../image/raster';
import { grayMorphology } from './grayMorphology';
import type { OpenCv } from './openCvShape';

/**
 * How far each pixel stands above its surroundings: shows bright details narrower than a square window.
 *
 * @param raster - One channel.
 * @param sizePx - Side of the window, an odd whole number of pixels.
 * @returns Picture minus opening, ≥ 0, same unit.
 * @throws RangeError for another number of channels or another size.
 */
export function topHat(cv: OpenCv, raster: Raster, sizePx: number): Raster {
  return grayMorphology(cv, raster, cv.MORPH_TOPHAT, sizePx);
}
