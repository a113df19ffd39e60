import type { Raster } from '../image/raster';
import type { OpenCv } from './openCvShape';
import { rasterOfMat, withMats } from './withMats';

/**
 * Shrinks a picture so that each new pixel is the mean of the area it covers: light is kept, nothing aliases.
 *
 * @param width - New width, pixels, 1 to the old one.
 * @param height - New height, pixels, 1 to the old one.
 * @throws RangeError if the new size is not within the old one.
 */
export function areaResize(cv: OpenCv, raster: Raster, width: number, height: number): Raster {
  if (!(width >= 1 && height >= 1 && width <= raster.width && height <= raster.height)) {
    throw new RangeError(
      `Cannot shrink ${raster.width} × ${raster.height} to ${width} × ${height}: the new size must lie within the old.`,
    );
  }
  return withMats(cv, (mats) => {
    const shrunk = mats.empty();
    cv.resize(mats.ofRaster(raster), shrunk, new cv.Size(width, height), 0, 0, cv.INTER_AREA);
    return rasterOfMat(shrunk, raster.channels);
  });
}
