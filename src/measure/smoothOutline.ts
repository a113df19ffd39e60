type Point = readonly [row: number, column: number];

/**
 * Smooths a closed line of points that follow each other about one pixel apart.
 *
 * @param points - Closed, first not repeated; fewer than eight are left as they are.
 * @param sigma - Standard deviation of the Gaussian along the line, in points, > 0.
 * @returns As many points.
 */
export function smoothOutline(points: readonly Point[], sigma: number): Point[] {
  if (points.length < 8) return [...points];
  const reach = Math.min(Math.ceil(3 * sigma), points.length >> 1);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, k) =>
    Math.exp(-((k - reach) ** 2) / (2 * sigma ** 2)),
  );
  const total = weights.reduce((sum, w) => sum + w, 0);
  const at = (i: number) => points[(i + points.length) % points.length]!;
  return points.map((_, i): Point => {
    let row = 0;
    let column = 0;
    weights.forEach((w, k) => {
      row += w * at(i + k - reach)[0];
      column += w * at(i + k - reach)[1];
    });
    return [row / total, column / total];
  });
}

/** Unit vectors that point out of a closed polygon, one a corner; (0, 0) where neighbors coincide. */
export function outwardNormals(points: readonly Point[]): Point[] {
  const turn = Math.sign(signedArea(points)) || 1;
  return points.map((_, i): Point => {
    const before = points[(i + points.length - 1) % points.length]!;
    const after = points[(i + 1) % points.length]!;
    const down = after[0] - before[0];
    const right = after[1] - before[1];
    const length = Math.hypot(down, right) || 1;
    return [(-turn * right) / length, (turn * down) / length];
  });
}

/** Area of a closed polygon, positive when it runs clockwise on the screen. */
export function signedArea(points: readonly Point[]): number {
  let twice = 0;
  points.forEach(([row, column], i) => {
    const [nextRow, nextColumn] = points[(i + 1) % points.length]!;
    twice += column * nextRow - nextColumn * row;
  });
  return twice / 2;
}
