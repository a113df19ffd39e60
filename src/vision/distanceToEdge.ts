import type { Mask, Raster } from '../image/raster';
import type { OpenCv } from './openCvShape';
import { rasterOfMat, withMats } from './withMats';

/**
 * Exact Euclidean distance of each pixel of a mask to the nearest pixel outside it.
 *
 * @returns Pixels; 0 outside the mask, 1 for an edge pixel. What lies beyond the picture counts as outside.
 */
export function distanceToEdge(cv: OpenCv, mask: Mask): Raster {
  const { width, height } = mask;
  return withMats(cv, (mats) => {
    const distance = mats.empty();
    cv.distanceTransform(mats.ofMask(withRim(mask)), distance, cv.DIST_L2, cv.DIST_MASK_PRECISE);
    const data = new Float32Array(width * height);
    for (let row = 0; row < height; row++) {
      const start = (row + 1) * (width + 2) + 1;
      data.set(distance.data32F.subarray(start, start + width), row * width);
    }
    return { width, height, channels: 1, data };
  });
}

/**
 * Exact Euclidean distance of each pixel to the nearest pixel of a mask; the picture's border is nothing.
 *
 * @param mask - Not empty.
 * @returns Pixels; 0 on the mask, 1 beside it.
 */
export function distanceToMask(cv: OpenCv, mask: Mask): Raster {
  const { width, height } = mask;
  return withMats(cv, (mats) => {
    const outside = mats.keep(new cv.Mat(height, width, cv.CV_8UC1));
    const { data } = outside;
    for (let i = 0; i < data.length; i++) data[i] = mask.data[i] ? 0 : 255;
    const distance = mats.empty();
    cv.distanceTransform(outside, distance, cv.DIST_L2, cv.DIST_MASK_PRECISE);
    return rasterOfMat(distance, 1);
  });
}

/** The mask with one more row or column of outside on every side. */
function withRim({ width, height, data }: Mask): Mask {
  const wider = new Uint8Array((width + 2) * (height + 2));
  for (let row = 0; row < height; row++) {
    wider.set(data.subarray(row * width, (row + 1) * width), (row + 1) * (width + 2) + 1);
  }
  return { width: width + 2, height: height + 2, data: wider };
}
