import type { Raster } from '../image/raster';
import type { BowlBasis } from './bowlBasis';

/** A bowl fitted to the light around a place; light in ln units. */
export interface BowlFit {
  readonly row: number;
  readonly column: number;
  readonly radiusPx: number;
  /** How much darker the bowl's middle is than the plane around it. */
  readonly dark: number;
  /** How much the light falls per radius toward the lamp, and to the left of that. */
  readonly fall: number;
  readonly crossFall: number;
  /** Root mean square of what the fit leaves. */
  readonly rest: number;
  /** Share of the patch's variance about a plane that the bowl explains, 0 to 1. */
  readonly explained: number;
  /** Gain over a plane of what a hole under this lamp explains: √(pixels) × ln of the ratio of variances. */
  readonly gain: number;
  /** The same for a flat spot in the bowl's place, as a mark of color is. */
  readonly flatGain: number;
}

/** Variance that every fit is taken to leave at least, ln units squared: about the grain of a clean photo. */
const LEAST_VARIANCE = 0.015 ** 2;

/**
 * Fits a bowl of given size at a given place, in a plane of free tilt.
 *
 * @param light - Log light, filled beyond the stone.
 * @param basis - Size of the bowl.
 * @param row - Center, whole pixels.
 * @param column - Center, whole pixels.
 * @param lampSide - Unit vector in the picture toward the lamp: x right, y up.
 * @returns The fit; pixels beyond the picture repeat its edge.
 */
export function bowlFit(
  light: Raster,
  basis: BowlBasis,
  row: number,
  column: number,
  [lampX, lampY]: readonly [number, number],
): BowlFit {
  const { width, height, data } = light;
  const { rows, columns, vectors, triangle, radiusPx } = basis;
  const [v0, v1, v2, v3, v4, v5] = vectors as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  let [p0, p1, p2, p3, p4, p5, squares] = [0, 0, 0, 0, 0, 0, 0];
  const middle = data[clamp(row, height) * width + clamp(column, width)]!;
  const reach = rows[rows.length - 1]!;
  const isWhole = row >= reach && column >= reach && row + reach < height && column + reach < width;
  for (let k = 0; k < rows.length; k++) {
    const r = row + rows[k]!;
    const c = column + columns[k]!;
    const value =
      (isWhole ? data[r * width + c]! : data[clamp(r, height) * width + clamp(c, width)]!) - middle;
    squares += value * value;
    p0 += v0[k]! * value;
    p1 += v1[k]! * value;
    p2 += v2[k]! * value;
    p3 += v3[k]! * value;
    p4 += v4[k]! * value;
    p5 += v5[k]! * value;
  }
  const about = Math.max(0, squares - p0 * p0 - p1 * p1 - p2 * p2);
  const toward = p4 * lampX - p5 * lampY;
  const count = rows.length;
  const down = p5 / triangle[5]![5]!;
  const right = (p4 - triangle[4]![5]! * down) / triangle[4]![4]!;
  const bowl = (p3 - triangle[3]![4]! * right - triangle[3]![5]! * down) / triangle[3]![3]!;
  const taken = Math.min(0, p3) ** 2 + Math.min(0, toward) ** 2;
  const left = Math.max(0, about - taken);
  const floor = count * LEAST_VARIANCE;
  return {
    row,
    column,
    radiusPx,
    dark: -bowl,
    fall: -(right * lampX - down * lampY),
    crossFall: right * lampY + down * lampX,
    rest: Math.sqrt(left / count),
    explained: taken / (about + floor),
    gain: Math.sqrt(count) * Math.log((about + floor) / (left + floor)),
    flatGain: Math.sqrt(count) * Math.log((about + floor) / (about - Math.min(0, p3) ** 2 + floor)),
  };
}

const clamp = (at: number, size: number) => (at < 0 ? 0 : at >= size ? size - 1 : at);
