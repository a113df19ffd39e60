import type { Raster } from '../image/raster';
import type { OpenCv } from './openCvShape';
import { rasterOfMat, withMats } from './withMats';

/**
 * A gray-scale morphological operation with a square window (a round one costs eight times as much).
 *
 * @param operation - One of OpenCV's `MORPH_…` numbers.
 * @param sizePx - Side of the window, an odd whole number of pixels.
 * @throws RangeError if the raster has more than one channel or the size is not odd.
 */
export function grayMorphology(cv: OpenCv, raster: Raster, operation: number, sizePx: number): Raster {
  if (raster.channels !== 1) throw new RangeError('Gray-scale morphology needs a picture of one channel.');
  if (sizePx < 1 || sizePx % 2 !== 1) {
    throw new RangeError(`A window of ${sizePx} pixels is not an odd whole number of them.`);
  }
  return withMats(cv, (mats) => {
    const changed = mats.empty();
    const window = mats.keep(cv.getStructuringElement(cv.MORPH_RECT, new cv.Size(sizePx, sizePx)));
    cv.morphologyEx(mats.ofRaster(raster), changed, operation, window);
    return rasterOfMat(changed, 1);
  });
}
