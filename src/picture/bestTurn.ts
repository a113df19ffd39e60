/** How to turn one silhouette so that it fits another. */
export interface BestTurn {
  /** Turn of the second one, degrees, clockwise as seen in a picture, above −180 and up to 180. */
  readonly turnDeg: number;
  /** Root mean square difference of the radii that is left, 0 for the same shape. */
  readonly apart: number;
}

/**
 * The turn, without turning over, that brings a silhouette onto another best. Between the directions that silhouettes are
 * read in, the least of a parabola through the three best sums is taken.
 *
 * @param a - Silhouette that stays, radii in even directions, see `measure/silhouette`.
 * @param b - Silhouette to be turned, as many radii.
 * @throws RangeError when they are of different length, or empty.
 */
export function bestTurn(a: readonly number[], b: readonly number[]): BestTurn {
  const n = a.length;
  if (n === 0 || b.length !== n)
    throw new RangeError(`Silhouettes of ${n} and ${b.length} directions do not compare.`);
  const misfits = Array.from({ length: n }, (_, turn) =>
    a.reduce((sum, radius, k) => sum + (radius - b[(k - turn + n) % n]!) ** 2, 0),
  );
  const least = Math.min(...misfits);
  const turn = misfits.indexOf(least);
  const [before, after] = [misfits[(turn - 1 + n) % n]!, misfits[(turn + 1) % n]!];
  const bend = before - 2 * least + after;
  const between = bend > 0 ? (before - after) / (2 * bend) : 0;
  const turnDeg = (360 * (turn + between)) / n;
  return { turnDeg: turnDeg > 180 ? turnDeg - 360 : turnDeg, apart: Math.sqrt(least / n) };
}
