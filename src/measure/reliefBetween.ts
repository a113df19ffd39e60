import type { Mask, Raster } from '../image/raster';
import { maskedBlur } from './maskedBlur';
import { solveSymmetric } from './solveSymmetric';
import type { Blur } from './stoneSurface';

/** How strongly a place's shading follows the lamp from one photo to the next. */
export interface LampAnswer {
  /** Strength of a hollow's pattern in the difference of logarithms: half its swing from wall to wall. */
  readonly swing: number;
  /** The same over its standard error, from what the pattern leaves unexplained around it. */
  readonly tValue: number;
}

/** A place whose shading follows the lamp as a hollow's does. */
export interface Hollow extends LampAnswer {
  /** Center and radius, places. */
  readonly row: number;
  readonly column: number;
  readonly radius: number;
}

/** Answers how strongly the shading of a spot follows the lamp: row, column, radius in places; null where too little is seen. */
export type AskLamp = (row: number, column: number, radius: number) => LampAnswer | null;

/** Shading slower than this is the stone's shape, mm. */
const SHAPE_MM = 1.6;
/** A hollow's pattern falls off with a Gaussian of this share of its radius. */
const FALL = 0.62;
/** The pattern is fitted within so many radii. */
const WINDOW = 1.9;
/** Peak of s · exp(−s²/2), at s = 1: turns the pattern's factor into its swing. */
const PEAK = Math.exp(-0.5);
/** Radii tried, places, each so many times the one before. */
const LEAST_RADIUS = 1.7;
const GROWTH = 1.3;
const RADII = 7;
/** A weaker hollow whose center lies within so many radii of a stronger one is the same. */
const SAME_RADII = 1.3;

/**
 * Answers for one stone seen under two lamps.
 *
 * In the difference of logarithms color cancels: pattern stays the same under both lamps. A hollow's walls do not:
 * the one toward a lamp is dark under it. So the difference rises and falls across a hollow along the way the lamp
 * went: the derivative of a bell. That pattern is fitted beside a plane, by least squares.
 *
 * @param difference - Logarithm of the first photo less that of the second; NaN where either shows nothing.
 * @param mask - The stone.
 * @param way - First lamp's direction less the second's: x right, y up; not (0, 0).
 */
export function reliefBetween(difference: Raster, mask: Mask, way: readonly [number, number]): AskLamp {
  const { data, width, height } = difference;
  const length = Math.hypot(...way);
  const [wx, wy] = [way[0] / length, way[1] / length];
  return (row, column, radius) => {
    const reach = Math.max(3, WINDOW * radius);
    const sums = new Float64Array(10);
    const sides = new Float64Array(4);
    let [count, whole, square] = [0, 0, 0];
    for (let r = Math.ceil(row - reach); r <= row + reach; r++) {
      for (let c = Math.ceil(column - reach); c <= column + reach; c++) {
        const far2 = (r - row) ** 2 + (c - column) ** 2;
        if (far2 > reach * reach) continue;
        whole++;
        const i = r * width + c;
        if (r < 0 || c < 0 || r >= height || c >= width || !mask.data[i] || Number.isNaN(data[i]!)) continue;
        const s = ((r - row) * wy - (c - column) * wx) / (FALL * radius);
        const bell = s * Math.exp(-far2 / (2 * (FALL * radius) ** 2));
        const basis = [bell, 1, r - row, c - column];
        const value = data[i]!;
        count++;
        square += value * value;
        for (let a = 0, k = 0; a < 4; a++) {
          sides[a]! += basis[a]! * value;
          for (let b = 0; b <= a; b++, k++) sums[k]! += basis[a]! * basis[b]!;
        }
      }
    }
    return 2 * count < whole || count < 8 ? null : answerOf(sums, sides, square, count);
  };
}

/** Solves the normal equations (lower triangle by rows) for the pattern's factor and its standard error. */
function answerOf(sums: Float64Array, sides: Float64Array, square: number, count: number): LampAnswer | null {
  const at = (a: number, b: number) => sums[(Math.max(a, b) * (Math.max(a, b) + 1)) / 2 + Math.min(a, b)]!;
  const matrix = Float64Array.from({ length: 16 }, (_, k) => at(Math.floor(k / 4), k % 4));
  const solved = solveSymmetric(matrix, sides);
  const first = solveSymmetric(matrix, Float64Array.of(1, 0, 0, 0));
  if (!solved || !first) return null;
  const explained = solved.reduce((sum, value, a) => sum + value * sides[a]!, 0);
  const noise = Math.max(1e-9, square - explained) / Math.max(1, count - 4);
  const error = Math.sqrt(noise * Math.max(1e-12, first[0]!));
  return { swing: solved[0]! * PEAK, tValue: solved[0]! / error };
}

/**
 * Finds hollows by how shading follows the lamp, without regard to color.
 *
 * @param difference - As for `reliefBetween`.
 * @param mask - The stone.
 * @param way - As for `reliefBetween`.
 * @param mmPerPlace - Scale.
 * @param blur - Gaussian blur.
 * @param least - Weaker answers are left out.
 * @returns The strongest first; none within another.
 */
export function hollowsBetween(
  difference: Raster,
  mask: Mask,
  way: readonly [number, number],
  mmPerPlace: number,
  blur: Blur,
  least: LampAnswer,
): Hollow[] {
  const ask = reliefBetween(difference, mask, way);
  const seen: Mask = {
    ...mask,
    data: mask.data.map((inside, i) => (inside && !Number.isNaN(difference.data[i]!) ? 1 : 0)),
  };
  const filled = { ...difference, data: difference.data.map((value) => (Number.isNaN(value) ? 0 : value)) };
  const slow = maskedBlur(filled, seen, SHAPE_MM / mmPerPlace, blur);
  const fast = { ...filled, data: filled.data.map((value, i) => (seen.data[i] ? value - slow.data[i]! : 0)) };
  const found: Hollow[] = [];
  for (let k = 0; k < RADII; k++) {
    const radius = LEAST_RADIUS * GROWTH ** k;
    for (const [row, column] of crests(blur(fast, FALL * radius), seen, way)) {
      const answer = ask(row, column, radius);
      if (answer && answer.swing >= least.swing && answer.tValue >= least.tValue) {
        found.push({ row, column, radius, ...answer });
      }
    }
  }
  found.sort((a, b) => b.tValue - a.tValue);
  const kept: Hollow[] = [];
  for (const one of found) {
    const isSame = kept.some(
      (other) =>
        Math.hypot(one.row - other.row, one.column - other.column) <
        SAME_RADII * Math.max(one.radius, other.radius),
    );
    if (!isSame) kept.push(one);
  }
  return kept;
}

/** Places where a smooth picture rises more steeply away from the lamp's way than at all eight neighbors. */
function crests(
  { data, width, height }: Raster,
  mask: Mask,
  way: readonly [number, number],
): [number, number][] {
  const rise = new Float32Array(data.length);
  for (let row = 1; row < height - 1; row++) {
    for (let i = row * width + 1; i < row * width + width - 1; i++) {
      rise[i] = (data[i + width]! - data[i - width]!) * way[1] - (data[i + 1]! - data[i - 1]!) * way[0];
    }
  }
  const places: [number, number][] = [];
  for (let row = 1; row < height - 1; row++) {
    for (let column = 1; column < width - 1; column++) {
      const i = row * width + column;
      const here = rise[i]!;
      if (!mask.data[i] || here <= 0) continue;
      const around = [-width - 1, -width, -width + 1, -1, 1, width - 1, width, width + 1];
      if (around.every((step) => rise[i + step]! <= here)) places.push([row, column]);
    }
  }
  return places;
}
