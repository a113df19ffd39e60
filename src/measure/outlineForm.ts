import { ellipseOff } from './ellipseOff';
import { signedArea } from './smoothOutline';

/** A closed outline against even shapes. */
export interface OutlineForm {
  /** Distance of half the outline from the ellipse that most of it lies on, share of the mean radius, see `ellipseOff`. */
  readonly offEllipse: number;
  /** Root mean square distance from the outline mirrored at the axis through its center that suits it best, as `offEllipse`. */
  readonly offMirror: number;
  /** Length over that of the circle of equal area, at least 1. */
  readonly lengthRatio: number;
}

type Points = readonly (readonly [row: number, column: number])[];

const SAMPLES = 180;
/** Bearings at which an outline is held against its mirror image; axes are tried at half their distance. */
const BEARINGS = 360;

/**
 * How near a closed outline is to an ellipse and to its own mirror image.
 *
 * @param outline - Rows and columns of a polygon, last point not repeated, at least three.
 */
export function outlineForm(outline: Points): OutlineForm {
  const points = evenly(outline, SAMPLES);
  const center = centroid(points);
  const radius = Math.sqrt(Math.abs(signedArea(points)) / Math.PI);
  const length = points.reduce((sum, [row, column], i) => {
    const [nextRow, nextColumn] = points[(i + 1) % points.length]!;
    return sum + Math.hypot(nextRow - row, nextColumn - column);
  }, 0);
  const inRadii = points.map(([row, column]): [number, number] => [
    (row - center.row) / radius,
    (column - center.column) / radius,
  ]);
  return {
    offEllipse: ellipseOff(inRadii),
    offMirror: offMirror(reaches(inRadii)),
    lengthRatio: length / (2 * Math.PI * radius),
  };
}

/** How far an outline around the origin reaches, by bearing; where a ray crosses it several times, the farthest. */
function reaches(points: Points): Float64Array {
  const reach = new Float64Array(BEARINGS);
  const step = (2 * Math.PI) / BEARINGS;
  points.forEach(([v, u], i) => {
    const [v2, u2] = points[(i + 1) % points.length]!;
    const cross = u * v2 - v * u2;
    const begin = Math.atan2(v, u);
    const end = begin + Math.atan2(cross, u * u2 + v * v2);
    for (let k = Math.ceil(Math.min(begin, end) / step); k * step <= Math.max(begin, end); k++) {
      const [cos, sin] = [Math.cos(k * step), Math.sin(k * step)];
      const across = cos * (v2 - v) - sin * (u2 - u);
      const at = (k + 2 * BEARINGS) % BEARINGS;
      reach[at] = Math.max(reach[at]!, across === 0 ? Math.hypot(u, v) : cross / across);
    }
  });
  return reach;
}

function offMirror(reach: Float64Array): number {
  const mean = reach.reduce((sum, one) => sum + one, 0) / BEARINGS;
  let least = Number.POSITIVE_INFINITY;
  for (let axis = 0; axis < BEARINGS; axis++) {
    let squares = 0;
    for (let k = 0; k < BEARINGS; k++) {
      squares += (reach[k]! - reach[(axis - k + BEARINGS) % BEARINGS]!) ** 2;
    }
    least = Math.min(least, squares);
  }
  // Halved: two outlines apart by so much each lie half of it off the one between them.
  return Math.sqrt(least / BEARINGS) / (2 * mean);
}

/** Center of a polygon's area, by Green's theorem. */
function centroid(points: Points): { row: number; column: number } {
  let [twice, row, column] = [0, 0, 0];
  const [r0, c0] = points[0]!;
  points.forEach(([r, c], i) => {
    const [r2, c2] = points[(i + 1) % points.length]!;
    const cross = (r - r0) * (c2 - c0) - (c - c0) * (r2 - r0);
    twice += cross;
    row += (r - r0 + r2 - r0) * cross;
    column += (c - c0 + c2 - c0) * cross;
  });
  return { row: r0 + row / (3 * twice), column: c0 + column / (3 * twice) };
}

/** Points at even distances along a polygon. */
function evenly(outline: Points, count: number): [number, number][] {
  const ends = [0];
  outline.forEach(([r, c], i) => {
    const [r2, c2] = outline[(i + 1) % outline.length]!;
    ends.push(ends[i]! + Math.hypot(r2 - r, c2 - c));
  });
  const total = ends[outline.length]!;
  let at = 0;
  return Array.from({ length: count }, (_, k) => {
    const far = (k / count) * total;
    while (at < outline.length - 1 && ends[at + 1]! <= far) at++;
    const [r, c] = outline[at]!;
    const [r2, c2] = outline[(at + 1) % outline.length]!;
    const share = (far - ends[at]!) / Math.max(1e-9, ends[at + 1]! - ends[at]!);
    return [r + share * (r2 - r), c + share * (c2 - c)];
  });
}
