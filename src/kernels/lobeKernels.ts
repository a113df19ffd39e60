import { type Blocks, meansAt, roomForMeans } from './blockMeans';
import { doublesAt, floatsAt, openKernels, placesFor } from './openKernels';

/** Where a lobe lies, how its surface bends, and the lamp, as `drawLobe` takes them. */
export interface LobeField {
  /**
   * Factors of x, y, x², xy, y² of the slope, by samples from the center: along the tilt and across it. With a tilt they are
   * of the unit normal's sideways part, without one in radii of the lamp.
   */
  readonly along: SlopeFactors;
  readonly across: SlopeFactors;
  /** Center, samples. */
  readonly row: number;
  readonly column: number;
  /** Angle between the normal at the center and the camera; null for slopes that are drawn as they are. */
  readonly tilt: { readonly sine: number; readonly cosine: number } | null;
  /** From the tilt's direction to the lamp's sides, radians; null for a round lamp. */
  readonly turnRad: number | null;
  /** Half-vector radius of the lamp. */
  readonly radius: number;
  /** GGX roughness over that radius. */
  readonly alphaOverA: number;
}

export type SlopeFactors = readonly [number, number, number, number, number];

const FIELD_NUMBERS = 18;

/**
 * Draws the share of the lamp's radiance that a rough mirror sends to each block of samples: sampled, weighted around
 * each block, and summed. Right to about 10⁻⁶.
 *
 * @param field - Surface and lamp.
 * @param blocks - The grid.
 * @param weights - Weights of the samples around a block along each side, the same from both ends; as `blockMeans` has them.
 * @param into - `width * height` values, 0 to 1, overwritten.
 */
export function drawLobe(field: LobeField, blocks: Blocks, weights: Float64Array, into: Float64Array): void {
  const { width, height, q } = blocks;
  const samples = width * height * q * q;
  const [at, fine, rest] = placesFor(
    8 * FIELD_NUMBERS,
    4 * samples,
    roomForMeans(blocks, weights.length),
  ) as [number, number, number];
  const { along, across, row, column, tilt, turnRad, radius, alphaOverA } = field;
  const [sine, cosine] = turnRad === null ? [0, 1] : [Math.sin(turnRad), Math.cos(turnRad)];
  const numbers = doublesAt(at, FIELD_NUMBERS);
  numbers.set(along);
  numbers.set(across, 5);
  numbers.set([row, column, tilt?.sine ?? 0, tilt?.cosine ?? 1, sine, cosine, alphaOverA ** 2, radius], 10);
  const isSquare = turnRad === null ? 0 : 1;
  openKernels().lobePlane(at, tilt ? 1 : 0, isSquare, width * q, height * q, fine);
  meansAt(fine, blocks, weights, rest, into);
}

/**
 * Shares of a round lamp's radiance that a rough mirror shows at many places; `lobeShare` in `optics` for each.
 *
 * @param xs - Distances from the highlight's center to the right, in radii of the lamp's image.
 * @param ys - Distances up.
 * @param alphaOverA - GGX roughness over that radius, above 0.
 * @param into - As many shares, 0 to 1, overwritten.
 */
export function roundLobes(xs: Float32Array, ys: Float32Array, alphaOverA: number, into: Float32Array): void {
  const [x, y, to] = given(xs, ys);
  openKernels().roundLobes(x, y, xs.length, alphaOverA ** 2, to);
  into.set(floatsAt(to, xs.length));
}

/**
 * The same for a square lamp.
 *
 * @param xs - Distances to the right, in radii of the disc of the lamp's area.
 * @param ys - Distances up.
 * @param turnRad - Turn of the lamp's sides, from right toward up.
 */
export function squareLobes(
  xs: Float32Array,
  ys: Float32Array,
  turnRad: number,
  alphaOverA: number,
  into: Float32Array,
): void {
  const [x, y, to] = given(xs, ys);
  openKernels().squareLobes(x, y, xs.length, Math.sin(turnRad), Math.cos(turnRad), alphaOverA ** 2, to);
  into.set(floatsAt(to, xs.length));
}

function given(xs: Float32Array, ys: Float32Array): [number, number, number] {
  const [x, y, to] = placesFor(xs.byteLength, ys.byteLength, xs.byteLength) as [number, number, number];
  floatsAt(x, xs.length).set(xs);
  floatsAt(y, ys.length).set(ys);
  return [x, y, to];
}
