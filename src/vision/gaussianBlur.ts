import type { Raster } from '../image/raster';
import type { OpenCv } from './openCvShape';
import { rasterOfMat, withMats } from './withMats';

/**
 * Gaussian blur; beyond the border the picture is mirrored about its outermost pixels.
 *
 * @param sigmaPx - Standard deviation, pixels, > 0; the kernel reaches four of them.
 * @throws RangeError if `sigmaPx` is not positive.
 */
export function gaussianBlur(cv: OpenCv, raster: Raster, sigmaPx: number): Raster {
  if (!(sigmaPx > 0)) throw new RangeError(`A blur of ${sigmaPx} pixels is not positive.`);
  return withMats(cv, (mats) => {
    const blurred = mats.empty();
    const sizeFromSigma = new cv.Size(0, 0);
    cv.GaussianBlur(mats.ofRaster(raster), blurred, sizeFromSigma, sigmaPx, sigmaPx, cv.BORDER_REFLECT_101);
    return rasterOfMat(blurred, raster.channels);
  });
}
