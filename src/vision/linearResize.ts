import type { Raster } from '../image/raster';
import type { OpenCv } from './openCvShape';
import { rasterOfMat, withMats } from './withMats';

/**
 * Enlarges a picture bilinearly, pixel centers at half pixels.
 *
 * @param width - New width, pixels, the old one or more.
 * @param height - New height, pixels, the old one or more.
 * @throws RangeError if the new size is smaller than the old: shrinking this way would alias.
 */
export function linearResize(cv: OpenCv, raster: Raster, width: number, height: number): Raster {
  if (!(width >= raster.width && height >= raster.height)) {
    throw new RangeError(
      `Cannot enlarge ${raster.width} × ${raster.height} to ${width} × ${height}: the new size must not be smaller.`,
    );
  }
  return withMats(cv, (mats) => {
    const large = mats.empty();
    cv.resize(mats.ofRaster(raster), large, new cv.Size(width, height), 0, 0, cv.INTER_LINEAR);
    return rasterOfMat(large, raster.channels);
  });
}
