import type { Mask } from '../image/raster';
import type { Mat, OpenCv } from './openCvShape';
import { withMats } from './withMats';

/**
 * The outline of the largest piece of a mask: every pixel on its outer rim, in order, holes left out.
 *
 * @returns `[row, column]` of neighboring pixel centers, closed, first not repeated; empty for an empty mask.
 */
export function outerOutline(cv: OpenCv, mask: Mask): [row: number, column: number][] {
  return withMats(cv, (mats) => {
    const contours = mats.keep(new cv.MatVector());
    cv.findContours(mats.ofMask(mask), contours, mats.empty(), cv.RETR_EXTERNAL, cv.CHAIN_APPROX_NONE);
    let largest: Mat | undefined;
    let largestArea = -1;
    for (let i = 0; i < contours.size(); i++) {
      const contour = mats.keep(contours.get(i));
      const area = cv.contourArea(contour);
      if (area > largestArea) [largest, largestArea] = [contour, area];
    }
    return largest ? pointsOf(largest) : [];
  });
}

function pointsOf(contour: Mat): [row: number, column: number][] {
  const { data32S: xy, rows } = contour;
  return Array.from({ length: rows }, (_, i) => [xy[2 * i + 1]!, xy[2 * i]!]);
}
