/** Directions in which a silhouette is read. */
export const SILHOUETTE_DIRECTIONS = 72;

/**
 * Distance of a closed outline from its center of gravity in even directions, over the radius of the circle of equal
 * area: a shape without size. On outlines that fold back the last crossing of the polygon's own order counts.
 *
 * @param outline - Rows and columns of a polygon, last point not repeated, at least three.
 * @returns 72 values about 1, counterclockwise from the left as seen in the picture turned by any angle.
 */
export function silhouette(outline: readonly (readonly [number, number])[]): number[] {
  const { row, column, area } = centerOf(outline);
  const rays = outline
    .map(([r, c]) => ({ angle: Math.atan2(r - row, c - column), radius: Math.hypot(r - row, c - column) }))
    .sort((a, b) => a.angle - b.angle);
  const size = Math.sqrt(area / Math.PI);
  const around = [
    { ...rays.at(-1)!, angle: rays.at(-1)!.angle - 2 * Math.PI },
    ...rays,
    { ...rays[0]!, angle: rays[0]!.angle + 2 * Math.PI },
  ];
  let next = 1;
  return Array.from({ length: SILHOUETTE_DIRECTIONS }, (_, k) => {
    const angle = -Math.PI + (2 * Math.PI * k) / SILHOUETTE_DIRECTIONS;
    while (next < around.length - 1 && around[next]!.angle < angle) next++;
    const [from, to] = [around[next - 1]!, around[next]!];
    const share = to.angle > from.angle ? (angle - from.angle) / (to.angle - from.angle) : 0;
    return (from.radius + Math.min(1, Math.max(0, share)) * (to.radius - from.radius)) / size;
  });
}

/** Center of gravity and area of a polygon, by the shoelace formula. */
function centerOf(outline: readonly (readonly [number, number])[]) {
  let [twice, row, column] = [0, 0, 0];
  outline.forEach(([r, c], i) => {
    const [r2, c2] = outline[(i + 1) % outline.length]!;
    const cross = c * r2 - c2 * r;
    twice += cross;
    row += (r + r2) * cross;
    column += (c + c2) * cross;
  });
  return { row: row / (3 * twice), column: column / (3 * twice), area: Math.abs(twice) / 2 };
}

/**
 * How different two silhouettes are once one is turned, and turned over, to fit the other best.
 *
 * @returns Root mean square difference of their radii, 0 for the same shape.
 */
export function silhouettesApart(a: readonly number[], b: readonly number[]): number {
  return Math.min(turnedApart(a, b), turnedApart(a, b.toReversed()));
}

/**
 * How different two silhouettes are once one is turned to fit the other best, without turning it over.
 *
 * @returns Root mean square difference of their radii, 0 for the same shape.
 */
export function turnedApart(a: readonly number[], b: readonly number[]): number {
  const n = a.length;
  let least = Number.POSITIVE_INFINITY;
  for (let turn = 0; turn < n; turn++) {
    let sum = 0;
    for (let k = 0; k < n && sum < least; k++) sum += (a[k]! - b[(k + turn) % n]!) ** 2;
    least = Math.min(least, sum);
  }
  return Math.sqrt(least / n);
}
