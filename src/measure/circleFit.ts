import { solveSymmetric } from './solveSymmetric';

/** A circle in pixels. */
export interface Circle {
  readonly row: number;
  readonly column: number;
  readonly radiusPx: number;
}

/** A circle fitted to edge points, and how many of them lie on it. */
export interface CircleFit extends Circle {
  /** Share of the points within one percent of the radius, or half a pixel, of the circle. */
  readonly onCircle: number;
}

const ROUNDS = 12;

/**
 * Fits a circle to edge points of which some do not belong to it.
 *
 * Algebraic fit (Kåsa) re-weighted by distance with Tukey's biweight.
 *
 * @param points - Row and column of each edge point, pixels; at least five.
 * @param start - Circle near the right one.
 * @returns The circle, or null when the points do not hold one.
 * @see Kåsa 1976, IEEE Trans. Instrum. Meas. 25(1).
 */
export function circleFit(points: readonly (readonly [number, number])[], start: Circle): CircleFit | null {
  if (points.length < 5) return null;
  let circle = start;
  for (let round = 0; round < ROUNDS; round++) {
    const distances = points.map((p) => Math.abs(distanceTo(circle, p)));
    const usual = [...distances].sort((a, b) => a - b)[points.length >> 1]!;
    const limit = Math.max(4.685 * 1.4826 * usual, 0.004 * circle.radiusPx, 0.3);
    const weights = distances.map((d) => (d < limit ? (1 - (d / limit) ** 2) ** 2 : 0));
    const next = weightedCircle(points, weights, circle);
    if (!next) return null;
    circle = next;
  }
  const near = Math.max(0.5, 0.01 * circle.radiusPx);
  const onCircle = points.filter((p) => Math.abs(distanceTo(circle, p)) < near).length / points.length;
  return { ...circle, onCircle };
}

function distanceTo(circle: Circle, [row, column]: readonly [number, number]): number {
  return Math.hypot(row - circle.row, column - circle.column) - circle.radiusPx;
}

function weightedCircle(
  points: readonly (readonly [number, number])[],
  weights: readonly number[],
  around: Circle,
): Circle | null {
  // x² + y² = 2·cx·x + 2·cy·y + q, with x and y in radii from the last center.
  const normal = new Float64Array(9);
  const right = new Float64Array(3);
  for (let i = 0; i < points.length; i++) {
    const y = (points[i]![0] - around.row) / around.radiusPx;
    const x = (points[i]![1] - around.column) / around.radiusPx;
    const terms = [2 * x, 2 * y, 1];
    for (let j = 0; j < 3; j++) {
      right[j]! += weights[i]! * terms[j]! * (x * x + y * y);
      for (let k = 0; k < 3; k++) normal[3 * j + k]! += weights[i]! * terms[j]! * terms[k]!;
    }
  }
  const solution = solveSymmetric(normal, right);
  if (!solution) return null;
  const [x, y, q] = solution as unknown as [number, number, number];
  const squared = q + x * x + y * y;
  if (!(squared > 0)) return null;
  return {
    row: around.row + y * around.radiusPx,
    column: around.column + x * around.radiusPx,
    radiusPx: Math.sqrt(squared) * around.radiusPx,
  };
}
