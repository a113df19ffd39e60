import { solveSymmetric } from './solveSymmetric';

const ROUNDS = 12;
/** Fits begin with all points, and with a third of them left out, from so many places on. */
const STARTS = 12;
/** Of points farther off than 4.685 times their usual distance (Tukey), or this, nothing is known; shares of the radius. */
const LEAST_LIMIT = 0.01;

/**
 * How far half of a closed outline is from the ellipse that most of it lies on: the rest may be something else that was
 * taken in, such as a part of a shadow.
 *
 * Algebraic fits re-weighted by distance with Tukey's biweight, of which the one counts whose median distance is least.
 *
 * @param points - Row and column at even distances along the outline, in mean radii from its center.
 * @returns Median distance of the points, to first order, in mean radii; infinite where no ellipse fits.
 * @see Sampson 1982, Computer Graphics and Image Processing 18(1), for the distance.
 */
export function ellipseOff(points: readonly (readonly [number, number])[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (let start = 0; start <= STARTS; start++) {
    const first = Math.round((start / STARTS) * points.length);
    const isLeftOut = (i: number) => (i - first + points.length) % points.length < points.length / 3;
    const weights = points.map((_, i) => (start < STARTS && isLeftOut(i) ? 0 : 1));
    least = Math.min(least, medianOff(points, weights));
  }
  return least;
}

function medianOff(points: readonly (readonly [number, number])[], weights: number[]): number {
  let median = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS; round++) {
    const conic = weightedConic(points, weights);
    if (!conic) return median;
    const [a, b, c, d, e] = conic as unknown as [number, number, number, number, number];
    if (!(4 * a * c > b * b)) return median;
    const off = points.map(([y, x]) => {
      const value = a * x * x + b * x * y + c * y * y + d * x + e * y - 1;
      return Math.abs(value) / Math.hypot(2 * a * x + b * y + d, b * x + 2 * c * y + e);
    });
    median = [...off].sort((p, q) => p - q)[off.length >> 1]!;
    const limit = Math.max(4.685 * 1.4826 * median, LEAST_LIMIT);
    for (let i = 0; i < off.length; i++) weights[i] = off[i]! < limit ? (1 - (off[i]! / limit) ** 2) ** 2 : 0;
  }
  return median;
}

/** Coefficients of a·x² + b·x·y + c·y² + d·x + e·y = 1; null where the points hold none. */
function weightedConic(
  points: readonly (readonly [number, number])[],
  weights: readonly number[],
): Float64Array | null {
  const normal = new Float64Array(25);
  const right = new Float64Array(5);
  const terms = new Float64Array(5);
  for (let i = 0; i < points.length; i++) {
    const weight = weights[i]!;
    if (weight === 0) continue;
    const y = points[i]![0];
    const x = points[i]![1];
    terms[0] = x * x;
    terms[1] = x * y;
    terms[2] = y * y;
    terms[3] = x;
    terms[4] = y;
    for (let j = 0; j < 5; j++) {
      right[j]! += weight * terms[j]!;
      for (let k = 0; k <= j; k++) normal[5 * j + k]! += weight * terms[j]! * terms[k]!;
    }
  }
  return solveSymmetric(normal, right);
}
