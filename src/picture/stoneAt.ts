import type { PixelPoint } from '../analysis/report';

interface Outlined {
  readonly id: number;
  readonly outline: readonly PixelPoint[];
}

function edges(outline: readonly PixelPoint[]): [PixelPoint, PixelPoint][] {
  return outline.map((from, index) => [from, outline[(index + 1) % outline.length] ?? from]);
}

function contains(outline: readonly PixelPoint[], [row, column]: PixelPoint): boolean {
  let inside = false;
  for (const [from, to] of edges(outline)) {
    const crosses = from[0] > row !== to[0] > row;
    if (crosses && column < from[1] + ((row - from[0]) / (to[0] - from[0])) * (to[1] - from[1]))
      inside = !inside;
  }
  return inside;
}

function distanceToEdge([row, column]: PixelPoint, [from, to]: [PixelPoint, PixelPoint]): number {
  const [dRow, dColumn] = [to[0] - from[0], to[1] - from[1]];
  const squared = dRow * dRow + dColumn * dColumn;
  const along = squared === 0 ? 0 : ((row - from[0]) * dRow + (column - from[1]) * dColumn) / squared;
  const share = Math.min(1, Math.max(0, along));
  return Math.hypot(row - from[0] - share * dRow, column - from[1] - share * dColumn);
}

/**
 * Finds the stone a person meant when they touched the photo.
 *
 * @param stones - Stones with closed outlines.
 * @param point - Where the photo was touched.
 * @param reachPx - How far beside a stone a touch still counts, for a wet thumb.
 * @returns The stone under the point, else the nearest one within reach, else null.
 */
export function stoneAt<Stone extends Outlined>(
  stones: readonly Stone[],
  point: PixelPoint,
  reachPx: number,
): Stone | null {
  const under = stones.find((stone) => contains(stone.outline, point));
  if (under !== undefined) return under;
  let [nearest, nearestPx]: [Stone | null, number] = [null, reachPx];
  for (const stone of stones) {
    const distancePx = Math.min(...edges(stone.outline).map((edge) => distanceToEdge(point, edge)));
    if (distancePx <= nearestPx) [nearest, nearestPx] = [stone, distancePx];
  }
  return nearest;
}
