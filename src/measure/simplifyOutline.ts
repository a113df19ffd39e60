type Point = readonly [row: number, column: number];

/**
 * Leaves out corners that lie almost on the line between their neighbors.
 *
 * @param points - Closed polygon, first not repeated.
 * @param tolerancePx - How far the outline may move, pixels, ≥ 0.
 * @returns Some of the points, in the same order.
 * @see Douglas and Peucker 1973, Cartographica 10(2), on two halves.
 */
export function simplifyOutline(points: readonly Point[], tolerancePx: number): Point[] {
  if (points.length < 4) return [...points];
  const half = points.length >> 1;
  return [
    ...simplified(points.slice(0, half + 1), tolerancePx).slice(0, -1),
    ...simplified([...points.slice(half), points[0]!], tolerancePx).slice(0, -1),
  ];
}

function simplified(points: readonly Point[], tolerancePx: number): Point[] {
  const first = points[0]!;
  const last = points[points.length - 1]!;
  let farthest = 0;
  let at = -1;
  for (let i = 1; i < points.length - 1; i++) {
    const apart = distanceToSegment(points[i]!, first, last);
    if (apart > farthest) [farthest, at] = [apart, i];
  }
  if (farthest <= tolerancePx) return [first, last];
  return [
    ...simplified(points.slice(0, at + 1), tolerancePx).slice(0, -1),
    ...simplified(points.slice(at), tolerancePx),
  ];
}

function distanceToSegment([row, column]: Point, from: Point, to: Point): number {
  const down = to[0] - from[0];
  const right = to[1] - from[1];
  const squared = down * down + right * right;
  const share = squared === 0 ? 0 : ((row - from[0]) * down + (column - from[1]) * right) / squared;
  const along = Math.min(1, Math.max(0, share));
  return Math.hypot(row - from[0] - along * down, column - from[1] - along * right);
}
