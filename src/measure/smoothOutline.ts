/** Spacing of the smoothed points along the outline, pixels of the mask. */
const SPACING = 1;
/** Standard deviation of the smoothing along the outline, pixels of the mask. */
const SIGMA = 1.6;
/** A corner is left out when the outline stays this close without it, pixels of the mask. */
const TOLERANCE = 0.25;

type Point = readonly [row: number, column: number];

/**
 * Turns the rim pixels of a mask into a smooth closed polygon along the mask's true edge.
 *
 * Rim pixels lie half a pixel inside the edge, so the smoothed line is moved out by as much.
 *
 * @param rim - Centers of the rim pixels in order, closed, first not repeated.
 * @returns Corners of the polygon, in the same direction; the rim itself when it has fewer than eight points.
 */
export function smoothOutline(rim: readonly Point[]): Point[] {
  if (rim.length < 8) return [...rim];
  const reach = Math.ceil((3 * SIGMA) / SPACING);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, k) =>
    Math.exp(-((k - reach) ** 2) / (2 * SIGMA ** 2)),
  );
  const total = weights.reduce((sum, w) => sum + w, 0);
  const at = (i: number) => rim[(i + rim.length) % rim.length]!;
  const smooth = rim.map((_, i): Point => {
    let row = 0;
    let column = 0;
    weights.forEach((w, k) => {
      row += w * at(i + k - reach)[0];
      column += w * at(i + k - reach)[1];
    });
    return [row / total, column / total];
  });
  return simplifyClosed(movedOut(smooth, 0.5));
}

/** Moves every point away from the inside by `distance`. */
function movedOut(points: readonly Point[], distance: number): Point[] {
  const turn = Math.sign(signedArea(points)) || 1;
  return points.map(([row, column], i) => {
    const before = points[(i + points.length - 1) % points.length]!;
    const after = points[(i + 1) % points.length]!;
    const down = after[0] - before[0];
    const right = after[1] - before[1];
    const length = Math.hypot(down, right) || 1;
    return [row - (turn * distance * right) / length, column + (turn * distance * down) / length];
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

/** Leaves out corners that lie almost on the line between their neighbors (Douglas–Peucker on two halves). */
function simplifyClosed(points: readonly Point[]): Point[] {
  const half = points.length >> 1;
  return [
    ...simplify(points.slice(0, half + 1)).slice(0, -1),
    ...simplify([...points.slice(half), points[0]!]).slice(0, -1),
  ];
}

function simplify(points: readonly Point[]): Point[] {
  const first = points[0]!;
  const last = points[points.length - 1]!;
  let farthest = 0;
  let at = -1;
  for (let i = 1; i < points.length - 1; i++) {
    const apart = distanceToSegment(points[i]!, first, last);
    if (apart > farthest) [farthest, at] = [apart, i];
  }
  if (farthest <= TOLERANCE) return [first, last];
  return [...simplify(points.slice(0, at + 1)).slice(0, -1), ...simplify(points.slice(at))];
}

function distanceToSegment([row, column]: Point, from: Point, to: Point): number {
  const down = to[0] - from[0];
  const right = to[1] - from[1];
  const squared = down * down + right * right;
  const share = squared === 0 ? 0 : ((row - from[0]) * down + (column - from[1]) * right) / squared;
  const along = Math.min(1, Math.max(0, share));
  return Math.hypot(row - from[0] - along * down, column - from[1] - along * right);
}
