import type { Mask } from '../image/raster';
import type { OpenCv } from './openCvShape';
import { maskOfMat, withMats } from './withMats';

/**
 * A morphological operation on a mask with a disc; what lies beyond the border never decides.
 *
 * @param operation - One of OpenCV's `MORPH_…` numbers.
 * @param radiusPx - Radius of the disc, a whole number of pixels, ≥ 0; its side is 2 · radius + 1.
 * @throws RangeError if the radius is negative or not whole.
 */
export function maskMorphology(cv: OpenCv, mask: Mask, operation: number, radiusPx: number): Mask {
  if (!Number.isInteger(radiusPx) || radiusPx < 0) {
    throw new RangeError(`A radius of ${radiusPx} pixels is not a whole number of them, 0 or more.`);
  }
  return withMats(cv, (mats) => {
    const changed = mats.empty();
    const side = 2 * radiusPx + 1;
    const disc = mats.keep(cv.getStructuringElement(cv.MORPH_ELLIPSE, new cv.Size(side, side)));
    cv.morphologyEx(mats.ofMask(mask), changed, operation, disc);
    return maskOfMat(changed);
  });
}
