/** Functions of place that describe a bowl in a tilted plane, on the pixels around a center. */
export interface BowlBasis {
  readonly radiusPx: number;
  /** Pixel offsets from the center. */
  readonly rows: Int16Array;
  readonly columns: Int16Array;
  /** Six orthonormal vectors over the offsets: 1, column, row, bowl, bowl · column, bowl · row. */
  readonly vectors: readonly Float64Array[];
  /** Upper triangle that leads from them back to the functions: function k = Σ vectors[j] · triangle[j][k]. */
  readonly triangle: readonly (readonly number[])[];
}

/** The fit looks this many radii around the center. */
const REACH = 1.75;
/** The bowl's edge in radii: whole inside the first, gone outside the second. */
const EDGE = { from: 0.7, to: 1.15 };
/** At most about this many pixels are looked at; in larger bowls every second, third, … */
const MOST_SAMPLES = 120;

/**
 * Prepares the least-squares fit of a bowl of one size.
 *
 * In a parabolic bowl the slope grows in proportion to the distance from the middle, so under a distant lamp
 * its shade runs linearly across it: dark toward the lamp, bright away from it. A spot of color is flat.
 *
 * @param radiusPx - Radius of the bowl, pixels, ≥ 1.
 */
export function bowlBasis(radiusPx: number): BowlBasis {
  const reach = REACH * radiusPx;
  const step = Math.max(1, Math.floor(Math.sqrt((Math.PI * reach * reach) / MOST_SAMPLES)));
  const rows: number[] = [];
  const columns: number[] = [];
  const most = Math.floor(reach / step) * step;
  for (let y = -most; y <= most; y += step) {
    for (let x = -most; x <= most; x += step) {
      if (x * x + y * y > reach * reach) continue;
      rows.push(y);
      columns.push(x);
    }
  }
  const bowl = rows.map((y, k) => 1 - smoothStep(Math.hypot(y, columns[k]!) / radiusPx));
  const functions = [
    rows.map(() => 1),
    columns.map((x) => x / radiusPx),
    rows.map((y) => y / radiusPx),
    bowl,
    bowl.map((value, k) => (value * columns[k]!) / radiusPx),
    bowl.map((value, k) => (value * rows[k]!) / radiusPx),
  ];
  return {
    radiusPx,
    rows: Int16Array.from(rows),
    columns: Int16Array.from(columns),
    ...orthonormal(functions),
  };
}

function smoothStep(rho: number): number {
  const t = Math.min(1, Math.max(0, (rho - EDGE.from) / (EDGE.to - EDGE.from)));
  return t * t * (3 - 2 * t);
}

/** Modified Gram–Schmidt. */
function orthonormal(functions: readonly (readonly number[])[]) {
  const vectors: Float64Array[] = [];
  const triangle = functions.map(() => functions.map(() => 0));
  functions.forEach((values, k) => {
    const rest = Float64Array.from(values);
    vectors.forEach((vector, j) => {
      const along = dot(vector, rest);
      triangle[j]![k] = along;
      for (let i = 0; i < rest.length; i++) rest[i]! -= along * vector[i]!;
    });
    const length = Math.sqrt(dot(rest, rest));
    triangle[k]![k] = length;
    vectors.push(rest.map((value) => value / Math.max(1e-12, length)));
  });
  return { vectors, triangle };
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
