import type { Box, Mask } from '../image/raster';
import type { Mat, OpenCv } from './openCvShape';
import { withMats } from './withMats';

/** A connected piece of a mask. */
export interface Component {
  /** Its number in `labels`, from 1. */
  readonly label: number;
  readonly areaPx: number;
  /** Center of gravity. */
  readonly row: number;
  readonly column: number;
  readonly box: Box;
}

export interface Components {
  readonly width: number;
  readonly height: number;
  /** Row-major; 0 outside the mask. */
  readonly labels: Int32Array;
  /** In the order of their labels; the background is none of them. */
  readonly components: readonly Component[];
}

/** Numbers the connected pieces of a mask; pixels that touch at a corner are connected. */
export function labelComponents(cv: OpenCv, mask: Mask): Components {
  return withMats(cv, (mats) => {
    const [labels, stats, centroids] = [mats.empty(), mats.empty(), mats.empty()];
    const count = cv.connectedComponentsWithStats(
      mats.ofMask(mask),
      labels,
      stats,
      centroids,
      8,
      cv.CV_32SC1,
    );
    const components = Array.from({ length: count - 1 }, (_, i) => component(cv, i + 1, stats, centroids));
    return { width: mask.width, height: mask.height, labels: labels.data32S.slice(), components };
  });
}

function component(cv: OpenCv, label: number, stats: Mat, centroids: Mat): Component {
  const stat = (column: number) => stats.data32S[label * stats.cols + column]!;
  return {
    label,
    areaPx: stat(cv.CC_STAT_AREA),
    row: centroids.data64F[2 * label + 1]!,
    column: centroids.data64F[2 * label]!,
    box: {
      row: stat(cv.CC_STAT_TOP),
      column: stat(cv.CC_STAT_LEFT),
      width: stat(cv.CC_STAT_WIDTH),
      height: stat(cv.CC_STAT_HEIGHT),
    },
  };
}
