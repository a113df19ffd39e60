import { nthSmallest } from '../image/nthSmallest';
import { solveSymmetric } from './solveSymmetric';

const ROUNDS = 12;
/** Rounds end when the median changes by less, as a share. */
const SETTLED = 0.002;
/** Coefficients of a conic. */
const TERMS = 5;
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
  const count = points.length;
  const terms = termsOf(points);
  const weights = new Float64Array(count);
  let least = Number.POSITIVE_INFINITY;
  for (let start = 0; start <= STARTS; start++) {
    weights.fill(1);
    const first = Math.round((start / STARTS) * count);
    if (start < STARTS) for (let k = 0; k < count / 3; k++) weights[(first + k) % count] = 0;
    least = Math.min(least, medianOff(terms, weights));
  }
  return least;
}

/** x², x·y, y², x and y of each point. */
function termsOf(points: readonly (readonly [number, number])[]): Float64Array {
  const terms = new Float64Array(TERMS * points.length);
  points.forEach(([y, x], i) => {
    terms.set([x * x, x * y, y * y, x, y], TERMS * i);
  });
  return terms;
}

/** The median distance once rounds of weighting change nothing more; `weights` are written over. */
function medianOff(terms: Float64Array, weights: Float64Array): number {
  const off = new Float64Array(weights.length);
  let median = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS; round++) {
    const conic = weightedConic(terms, weights);
    if (!conic || !(4 * conic[0]! * conic[2]! > conic[1]! ** 2)) return median;
    distances(terms, conic, off);
    const before = median;
    median = nthSmallest(off.slice(), off.length >> 1) ?? Number.POSITIVE_INFINITY;
    if (Math.abs(median / before - 1) < SETTLED) return median;
    const limit = Math.max(4.685 * 1.4826 * median, LEAST_LIMIT);
    for (let i = 0; i < off.length; i++) weights[i] = off[i]! < limit ? (1 - (off[i]! / limit) ** 2) ** 2 : 0;
  }
  return median;
}

/** Of each point from a conic, to first order. */
function distances(terms: Float64Array, conic: Float64Array, off: Float64Array): void {
  const a = conic[0]!;
  const b = conic[1]!;
  const c = conic[2]!;
  const d = conic[3]!;
  const e = conic[4]!;
  for (let i = 0, t = 0; i < off.length; i++, t += TERMS) {
    const x = terms[t + 3]!;
    const y = terms[t + 4]!;
    const value = a * terms[t]! + b * terms[t + 1]! + c * terms[t + 2]! + d * x + e * y - 1;
    const across = 2 * a * x + b * y + d;
    const down = b * x + 2 * c * y + e;
    off[i] = Math.abs(value) / Math.sqrt(across * across + down * down);
  }
}

/** Coefficients of a·x² + b·x·y + c·y² + d·x + e·y = 1; null where the points hold none. */
function weightedConic(terms: Float64Array, weights: Float64Array): Float64Array | null {
  const normal = new Float64Array(TERMS * TERMS);
  const right = new Float64Array(TERMS);
  for (let i = 0, t = 0; i < weights.length; i++, t += TERMS) {
    const weight = weights[i]!;
    if (weight === 0) continue;
    for (let j = 0; j < TERMS; j++) {
      const weighted = weight * terms[t + j]!;
      right[j]! += weighted;
      for (let k = 0; k <= j; k++) normal[TERMS * j + k]! += weighted * terms[t + k]!;
    }
  }
  return solveSymmetric(normal, right);
}
