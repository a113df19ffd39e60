import { roundLobeRow } from '../optics/roundLobeRow';
import { squareLobeRow } from '../optics/squareLobeRow';
import type { LobeOptics, LobeShape, SlopeTerms } from './highlightModel';

/** No slope is steeper than this, lamp radii: past the stone's rim. */
export const STEEPEST = 1e3;

/** Where the samples of the last lobe lie; overwritten by the next. */
let fine = new Float64Array(0);
/** Slopes of one row of samples, lamp radii. */
let rights = new Float64Array(0);
let downs = new Float64Array(0);

/**
 * Samples a highlight on a fine grid: the lobe of the lamp at the values of `slopeField`, row by row.
 * This is where most of a fit's time goes.
 *
 * @param columns - Samples across; `rows` of them down.
 * @param terms - Curvature and its change, lamp radii per sample.
 * @param shape - Center, window pixels, and roughness.
 * @param optics - Lamp, where the surface faces, and how many samples a window pixel has along each side.
 * @returns Row-major shares of the lamp's radiance, 0 to 1; the array may be longer, and the next call overwrites it.
 */
export function sampleLobe(
  columns: number,
  rows: number,
  terms: SlopeTerms,
  shape: LobeShape,
  optics: LobeOptics,
): Float64Array {
  const q = optics.oversampling;
  if (fine.length < columns * rows) fine = new Float64Array(columns * rows);
  if (rights.length < columns) {
    rights = new Float64Array(columns);
    downs = new Float64Array(columns);
  }
  const alphaOverA = shape.alpha / optics.sourceSlope;
  const centerRow = (shape.row + 0.5) * q - 0.5;
  const centerColumn = (shape.column + 0.5) * q - 0.5;
  const { half, lampTurnRad, sourceSlope } = optics;
  for (let row = 0; row < rows; row++) {
    slopesOfRow(columns, row - centerRow, centerColumn, terms, rights, downs);
    if (half !== null) tiltRow(columns, half, sourceSlope, rights, downs);
    const shares = fine.subarray(row * columns, (row + 1) * columns);
    if (lampTurnRad === null) roundLobeRow(rights, downs, alphaOverA, shares);
    else {
      for (let k = 0; k < columns; k++) downs[k] = -downs[k]!;
      squareLobeRow(rights, downs, lampTurnRad, alphaOverA, shares);
    }
  }
  return fine;
}

function slopesOfRow(
  columns: number,
  dy: number,
  centerColumn: number,
  { kxx, kxy, kyy, a, b, c, d }: SlopeTerms,
  rights: Float64Array,
  downs: Float64Array,
): void {
  const isEven = a === 0 && b === 0 && c === 0 && d === 0;
  for (let column = 0; column < columns; column++) {
    const dx = column - centerColumn;
    let right = kxx * dx + kxy * dy;
    let down = kxy * dx + kyy * dy;
    if (!isEven) {
      right = right + 3 * a * dx * dx + 2 * b * dx * dy + c * dy * dy;
      down = down + b * dx * dx + 2 * c * dx * dy + 3 * d * dy * dy;
    }
    rights[column] = right;
    downs[column] = down;
  }
}

/** As `slopeField` turns even slopes into those of a surface that faces halfway to the lamp at the center. */
function tiltRow(
  columns: number,
  half: readonly [number, number, number],
  sourceSlope: number,
  rights: Float64Array,
  downs: Float64Array,
): void {
  const sine = Math.hypot(half[0], half[1]);
  const ex = sine > 1e-6 ? half[0] / sine : 1;
  const ey = sine > 1e-6 ? -half[1] / sine : 0;
  const cosine = half[2];
  for (let k = 0; k < columns; k++) {
    const right = rights[k]!;
    const down = downs[k]!;
    const outward = sourceSlope * cosine * (ex * right + ey * down) + sine;
    const across = sourceSlope * (ex * down - ey * right);
    const z2 = 1 - outward * outward - across * across;
    const z = Math.sqrt(Math.max(0, z2));
    const along = outward * sine + z * cosine;
    if (z2 <= 1e-4 || along <= 1e-3) {
      rights[k] = STEEPEST;
      downs[k] = 0;
      continue;
    }
    const scale = 1 / (along * sourceSlope);
    const u1 = (outward * cosine - z * sine) * scale;
    const u2 = across * scale;
    rights[k] = ex * u1 - ey * u2;
    downs[k] = ey * u1 + ex * u2;
  }
}
