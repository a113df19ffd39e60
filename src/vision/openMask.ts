import type { Mask } from '../image/raster';
import { maskMorphology } from './maskMorphology';
import type { OpenCv } from './openCvShape';

/**
 * Removes what a disc does not fit into: specks, hairs and thin bridges.
 *
 * @param radiusPx - Radius of the disc, a whole number of pixels, ≥ 0.
 * @throws RangeError for another radius.
 */
export function openMask(cv: OpenCv, mask: Mask, radiusPx: number): Mask {
  return maskMorphology(cv, mask, cv.MORPH_OPEN, radiusPx);
}
