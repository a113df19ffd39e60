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
    const components = componentsOf(cv, count, stats, centroids);
    return { width: mask.width, height: mask.height, labels: labels.data32S.slice(), components };
  });
}

/** Every component but the background; a matrix's values are asked for once, which is what takes time. */
function componentsOf(cv: OpenCv, count: number, stats: Mat, centroids: Mat): Component[] {
  const { CC_STAT_AREA, CC_STAT_TOP, CC_STAT_LEFT, CC_STAT_WIDTH, CC_STAT_HEIGHT } = cv;
  const { data32S, cols } = stats;
  const { data64F } = centroids;
  return Array.from({ length: count - 1 }, (_, i): Component => {
    const label = i + 1;
    const stat = (column: number) => data32S[label * cols + column]!;
    return {
      label,
      areaPx: stat(CC_STAT_AREA),
      row: data64F[2 * label + 1]!,
      column: data64F[2 * label]!,
      box: {
        row: stat(CC_STAT_TOP),
        column: stat(CC_STAT_LEFT),
        width: stat(CC_STAT_WIDTH),
        height: stat(CC_STAT_HEIGHT),
      },
    };
  });
}
