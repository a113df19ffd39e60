import { solveSymmetric } from './solveSymmetric';

/** Number of body terms: level, two slopes, bowl. */
const TERMS = 4;

/**
 * Fits the stone's own light under a highlight: a plane, dimmed as the surface turns away, plus a weak bowl.
 *
 * A free bowl and a wide lobe look alike, so the bowl is held near zero by a ridge; the dimming that the
 * stone's curvature itself brings is given.
 *
 * @param values - Radiance left when the lobe is taken off, row-major.
 * @param weights - One weight per pixel, 0 to leave it out.
 * @param dimming - Share of its light that the surface keeps at each pixel for having turned away, 0 to 1.
 * @param width - Columns.
 * @param ridge - Strength of the hold on the bowl, in pixels of full weight, ≥ 0.
 * @returns The body at every pixel; zero everywhere when fewer than ten pixels have weight.
 */
export function bodyFit(
  values: Float64Array,
  weights: Float64Array,
  dimming: Float64Array,
  width: number,
  ridge: number,
): Float64Array {
  const height = values.length / width;
  const normal = new Float64Array(TERMS * TERMS);
  const right = new Float64Array(TERMS);
  const terms = new Float64Array(TERMS);
  let used = 0;
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i++) {
      const weight = weights[i]!;
      if (weight === 0) continue;
      used++;
      bodyTerms(x, y, width, height, dimming[i]!, terms);
      for (let j = 0; j < TERMS; j++) {
        right[j]! += weight * terms[j]! * values[i]!;
        for (let k = 0; k <= j; k++) normal[j * TERMS + k]! += weight * terms[j]! * terms[k]!;
      }
    }
  }
  const body = new Float64Array(values.length);
  if (used < 10) return body;
  normal[TERMS * TERMS - 1]! += ridge;
  const solution = solveSymmetric(normal, right);
  if (!solution) return body;
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i++) {
      bodyTerms(x, y, width, height, dimming[i]!, terms);
      for (let j = 0; j < TERMS; j++) body[i]! += solution[j]! * terms[j]!;
    }
  }
  return body;
}

function bodyTerms(
  x: number,
  y: number,
  width: number,
  height: number,
  dimming: number,
  into: Float64Array,
): void {
  const scale = 2 / Math.max(width, height);
  const u = (x - (width - 1) / 2) * scale;
  const v = (y - (height - 1) / 2) * scale;
  into[0] = dimming;
  into[1] = u * dimming;
  into[2] = v * dimming;
  into[3] = u * u + v * v;
}
