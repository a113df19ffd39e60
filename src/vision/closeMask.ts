import type { Mask } from '../image/raster';
import { maskMorphology } from './maskMorphology';
import type { OpenCv } from './openCvShape';

/**
 * Fills what a disc outside does not fit into: small holes, cracks and narrow bays.
 *
 * @param radiusPx - Radius of the disc, a whole number of pixels, ≥ 0.
 * @throws RangeError for another radius.
 */
export function closeMask(cv: OpenCv, mask: Mask, radiusPx: number): Mask {
  return maskMorphology(cv, mask, cv.MORPH_CLOSE, radiusPx);
}
