import { solveSymmetric } from './solveSymmetric';

const FEWEST_PIXELS = 10;

/** What the terms of a body are to each other, whatever light it is fitted to. */
export interface BodyTerms {
  readonly width: number;
  readonly weights: Float64Array;
  readonly dimming: Float64Array;
  /** Lower half of the normal equations' matrix, row by row; null when fewer than ten pixels have weight. */
  readonly normal: Float64Array | null;
}

/**
 * Fits the stone's own light under a highlight: a plane, dimmed as the surface turns away, plus a weak bowl.
 *
 * A free bowl and a wide lobe look alike, so the bowl is held near zero by a ridge; the dimming that the
 * stone's curvature itself brings is given.
 *
 * @param values - Radiance left when the lobe is taken off, row-major.
 * @param terms - Of this window; see `bodyTerms`.
 * @param body - Overwritten and returned; a new array when left out.
 * @returns The body at every pixel; zero everywhere when fewer than ten pixels have weight.
 */
export function bodyFit(
  values: Float64Array,
  terms: BodyTerms,
  body: Float64Array = new Float64Array(values.length),
): Float64Array {
  const solution = terms.normal && solveSymmetric(terms.normal, rightSide(values, terms));
  if (!solution) return body.fill(0);
  const { dimming, width } = terms;
  const [level, across, down, bowl] = solution as unknown as [number, number, number, number];
  const height = values.length / width;
  const scale = 2 / Math.max(width, height);
  for (let y = 0, i = 0; y < height; y++) {
    const v = (y - (height - 1) / 2) * scale;
    for (let x = 0; x < width; x++, i++) {
      const u = (x - (width - 1) / 2) * scale;
      const d = dimming[i]!;
      body[i] = level * d + across * (u * d) + down * (v * d) + bowl * (u * u + v * v);
    }
  }
  return body;
}

/**
 * The terms d, u·d, v·d and u² + v² of a window, where d is the dimming.
 *
 * @param weights - One weight per pixel, 0 to leave it out.
 * @param dimming - Share of its light that the surface keeps at each pixel for having turned away, 0 to 1.
 * @param width - Columns.
 * @param ridge - Strength of the hold on the bowl, in pixels of full weight, ≥ 0.
 */
export function bodyTerms(
  weights: Float64Array,
  dimming: Float64Array,
  width: number,
  ridge: number,
): BodyTerms {
  const height = weights.length / width;
  const scale = 2 / Math.max(width, height);
  let used = 0;
  // One by one: taking arrays apart costs several times as much as the sums.
  let dd = 0;
  let ud = 0;
  let uu = 0;
  let vd = 0;
  let vu = 0;
  let vv = 0;
  let bd = 0;
  let bu = 0;
  let bv = 0;
  let bb = 0;
  for (let y = 0, i = 0; y < height; y++) {
    const v = (y - (height - 1) / 2) * scale;
    for (let x = 0; x < width; x++, i++) {
      const weight = weights[i]!;
      if (weight === 0) continue;
      used++;
      const u = (x - (width - 1) / 2) * scale;
      const d = dimming[i]!;
      const across = u * d;
      const down = v * d;
      const bowl = u * u + v * v;
      const wu = weight * across;
      const wv = weight * down;
      const wb = weight * bowl;
      dd += weight * d * d;
      ud += wu * d;
      uu += wu * across;
      vd += wv * d;
      vu += wv * across;
      vv += wv * down;
      bd += wb * d;
      bu += wb * across;
      bv += wb * down;
      bb += wb * bowl;
    }
  }
  const normal = Float64Array.of(dd, 0, 0, 0, ud, uu, 0, 0, vd, vu, vv, 0, bd, bu, bv, bb + ridge);
  return { width, weights, dimming, normal: used < FEWEST_PIXELS ? null : normal };
}

function rightSide(values: Float64Array, { width, weights, dimming }: BodyTerms): Float64Array {
  const height = values.length / width;
  const scale = 2 / Math.max(width, height);
  let rd = 0;
  let ru = 0;
  let rv = 0;
  let rb = 0;
  for (let y = 0, i = 0; y < height; y++) {
    const v = (y - (height - 1) / 2) * scale;
    for (let x = 0; x < width; x++, i++) {
      const u = (x - (width - 1) / 2) * scale;
      const weighted = weights[i]! * values[i]!;
      const dimmed = weighted * dimming[i]!;
      rd += dimmed;
      ru += u * dimmed;
      rv += v * dimmed;
      rb += (u * u + v * v) * weighted;
    }
  }
  return Float64Array.of(rd, ru, rv, rb);
}
