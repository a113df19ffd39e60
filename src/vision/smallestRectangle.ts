import type { OpenCv } from './openCvShape';
import { withMats } from './withMats';

export interface Rectangle {
  /** Longer side, pixels. */
  readonly lengthPx: number;
  /** Shorter side, pixels. */
  readonly widthPx: number;
  /** From the row of pixels to the longer side, clockwise on the screen: over −π/2 to π/2. */
  readonly angleRad: number;
}

/**
 * The rectangle of least area around some points, in any direction.
 *
 * @param points - `[row, column]`, pixels; at least one.
 * @throws RangeError if there is no point.
 */
export function smallestRectangle(
  cv: OpenCv,
  points: readonly (readonly [row: number, column: number])[],
): Rectangle {
  if (points.length === 0) throw new RangeError('No rectangle can be laid around no points.');
  return withMats(cv, (mats) => {
    const xy = mats.keep(new cv.Mat(points.length, 1, cv.CV_32FC2));
    points.forEach(([row, column], i) => {
      xy.data32F.set([column, row], 2 * i);
    });
    const { size, angle } = cv.minAreaRect(xy);
    const turnDeg = size.width >= size.height ? angle : angle + 90;
    return {
      lengthPx: Math.max(size.width, size.height),
      widthPx: Math.min(size.width, size.height),
      angleRad: (halfTurn(turnDeg) * Math.PI) / 180,
    };
  });
}

/** Brings the direction of a line, degrees, to over −90 up to 90. */
function halfTurn(deg: number): number {
  return deg - 180 * Math.ceil(deg / 180 - 0.5);
}
