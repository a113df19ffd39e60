import { doublesAt, floatsAt, OVERRUN, openKernels, placesFor } from './openKernels';

/** Samples in blocks: `width` × `height` blocks of `q` × `q`. */
export interface Blocks {
  readonly width: number;
  readonly height: number;
  readonly q: number;
}

/**
 * Weighted means around each block of samples, in 32-bit floats. The edge is repeated outward.
 *
 * @param fine - Row-major, `width * q` columns and `height * q` rows.
 * @param blocks - The grid.
 * @param weights - Of the samples around a block along each side, the same from both ends: q + 2 · reach of them.
 * @param into - `width * height` means, overwritten.
 */
export function blockMeans(
  fine: ArrayLike<number>,
  blocks: Blocks,
  weights: Float64Array,
  into: Float64Array,
): void {
  const [at, rest] = placesFor(4 * fine.length, roomForMeans(blocks, weights.length)) as [number, number];
  floatsAt(at, fine.length).set(fine);
  meansAt(at, blocks, weights, rest, into);
}

/** Bytes that `meansAt` needs. */
export function roomForMeans({ width, height, q }: Blocks, length: number): number {
  const line = 4 * (width * q + length + 24);
  return 8 * width * height + OVERRUN + 4 * length + (q + 1) * line;
}

/** Means of samples that lie in the kernels' memory. */
export function meansAt(
  fine: number,
  { width, height, q }: Blocks,
  weights: Float64Array,
  room: number,
  into: Float64Array,
): void {
  const at = room + 8 * width * height + OVERRUN;
  floatsAt(at, weights.length).set(weights);
  openKernels().blockMeans(fine, width, height, q, at, weights.length, at + 4 * weights.length, room);
  into.set(doublesAt(room, width * height));
}
