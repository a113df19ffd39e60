/** A thing in a picture, known by its place and size. */
export interface SizedPoint {
  /** Right and down, mm. */
  readonly x: number;
  readonly y: number;
  readonly areaMm2: number;
}

/** Turn and shift that carry one picture's points onto another's: first turned about the origin, then shifted. */
export interface RigidMove {
  readonly turnRad: number;
  /** mm. */
  readonly right: number;
  readonly down: number;
  /** Pairs of indices that belong together. */
  readonly pairs: readonly (readonly [number, number])[];
}

/** Points belong together when they lie this near, mm, and their areas differ by no more than this factor. */
const NEAR_MM = 3;
const AREA_FACTOR = 1.35;
/** Distances within the two pictures agree this well, mm. */
const SPAN_MM = 2;
const FEWEST_PAIRS = 3;

/**
 * Finds the turn and shift by which most points of one picture lie on points of another.
 *
 * Every pair of points is tried on every pair of the other picture that is as far apart; the best is fitted anew to
 * all pairs by least squares.
 *
 * @param from - Points of one picture.
 * @param to - Points of the other, at the same scale.
 * @returns Null when fewer than three, or than half of the fewer points, agree.
 * @see Arun, Huang, Blostein 1987, "Least-squares fitting of two 3-D point sets", in the plane.
 */
export function rigidMatch(from: readonly SizedPoint[], to: readonly SizedPoint[]): RigidMove | null {
  let best: RigidMove | null = null;
  const spans = spansOf(from);
  const others = spansOf(to);
  for (const [i, j, length, angle] of spans) {
    for (const [k, l, otherLength, otherAngle] of others) {
      if (Math.abs(length - otherLength) > SPAN_MM) continue;
      if (!isAlike(from[i]!, to[k]!) || !isAlike(from[j]!, to[l]!)) continue;
      const move = paired(from, to, through(from, to, otherAngle - angle, i, j, k, l));
      if (!best || move.pairs.length > best.pairs.length) best = move;
    }
  }
  const fewest = Math.max(FEWEST_PAIRS, Math.ceil(Math.min(from.length, to.length) / 2));
  if (!best || best.pairs.length < fewest) return null;
  return paired(from, to, fitted(from, to, best.pairs));
}

type Move = Omit<RigidMove, 'pairs'>;

/** Where a point of the first picture lies in the second. */
export function moved({ turnRad, right, down }: Move, { x, y }: Pick<SizedPoint, 'x' | 'y'>) {
  const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
  return { x: c * x - s * y + right, y: s * x + c * y + down };
}

function spansOf(points: readonly SizedPoint[]): [number, number, number, number][] {
  return points.flatMap((a, i) =>
    points.flatMap((b, j): [number, number, number, number][] =>
      i === j ? [] : [[i, j, Math.hypot(b.x - a.x, b.y - a.y), Math.atan2(b.y - a.y, b.x - a.x)]],
    ),
  );
}

function isAlike(a: SizedPoint, b: SizedPoint): boolean {
  return Math.abs(Math.log(a.areaMm2 / b.areaMm2)) <= Math.log(AREA_FACTOR);
}

/** The move with this turn that brings the middle of two points onto that of two others. */
function through(
  from: readonly SizedPoint[],
  to: readonly SizedPoint[],
  turnRad: number,
  i: number,
  j: number,
  k: number,
  l: number,
): Move {
  const middle = { x: (from[i]!.x + from[j]!.x) / 2, y: (from[i]!.y + from[j]!.y) / 2 };
  const turned = moved({ turnRad, right: 0, down: 0 }, middle);
  return {
    turnRad,
    right: (to[k]!.x + to[l]!.x) / 2 - turned.x,
    down: (to[k]!.y + to[l]!.y) / 2 - turned.y,
  };
}

function paired(from: readonly SizedPoint[], to: readonly SizedPoint[], move: Move): RigidMove {
  const pairs: [number, number][] = [];
  from.forEach((point, i) => {
    const at = moved(move, point);
    const near = to
      .map((other, k) => ({ k, far: Math.hypot(other.x - at.x, other.y - at.y) }))
      .filter(({ k, far }) => far <= NEAR_MM && isAlike(point, to[k]!))
      .sort((a, b) => a.far - b.far)[0];
    if (near) pairs.push([i, near.k]);
  });
  return { ...move, pairs };
}

function fitted(
  from: readonly SizedPoint[],
  to: readonly SizedPoint[],
  pairs: readonly (readonly [number, number])[],
): Move {
  const mean = (value: (pair: readonly [number, number]) => number) =>
    pairs.reduce((sum, pair) => sum + value(pair), 0) / pairs.length;
  const a = { x: mean(([i]) => from[i]!.x), y: mean(([i]) => from[i]!.y) };
  const b = { x: mean(([, k]) => to[k]!.x), y: mean(([, k]) => to[k]!.y) };
  let [cosine, sine] = [0, 0];
  for (const [i, k] of pairs) {
    const [x, y, u, v] = [from[i]!.x - a.x, from[i]!.y - a.y, to[k]!.x - b.x, to[k]!.y - b.y];
    cosine += x * u + y * v;
    sine += x * v - y * u;
  }
  const turnRad = Math.atan2(sine, cosine);
  const turned = moved({ turnRad, right: 0, down: 0 }, a);
  return { turnRad, right: b.x - turned.x, down: b.y - turned.y };
}
