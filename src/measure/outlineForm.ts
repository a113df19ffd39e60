import { circleFit } from './circleFit';
import { signedArea } from './smoothOutline';

/** A closed outline against round shapes. */
export interface OutlineForm {
  /** Root mean square distance from the ellipse of the same area and second moments, share of the mean radius. */
  readonly offEllipse: number;
  /** Share of the outline on one circle, to 1.5 % of its radius: high too where a part beside it was taken in. */
  readonly onCircle: number;
  /** Length over that of the circle of equal area, at least 1. */
  readonly lengthRatio: number;
}

type Points = readonly (readonly [row: number, column: number])[];

const SAMPLES = 180;
const ON_CIRCLE = 0.015;
/** A circle this much smaller or larger than the outline fits only an arc of it. */
const MOST_OFF_SIZE = 0.2;

/**
 * How near a closed outline is to an ellipse and to a circle.
 *
 * @param outline - Rows and columns of a polygon, last point not repeated, at least three.
 */
export function outlineForm(outline: Points): OutlineForm {
  const points = evenly(outline, SAMPLES);
  const m = moments(points);
  const half = Math.hypot((m.rr - m.cc) / 2, m.rc);
  const middle = (m.rr + m.cc) / 2;
  // Second moments of an ellipse are a quarter of its squared half axes.
  const [long, short] = [2 * Math.sqrt(middle + half), 2 * Math.sqrt(Math.max(1e-9, middle - half))];
  const turn = 0.5 * Math.atan2(2 * m.rc, m.rr - m.cc);
  const radius = Math.sqrt(m.area / Math.PI);
  let [squares, length] = [0, 0];
  points.forEach(([row, column], i) => {
    const [r, c] = [row - m.row, column - m.column];
    const [u, v] = [Math.cos(turn) * r + Math.sin(turn) * c, Math.cos(turn) * c - Math.sin(turn) * r];
    const reach = Math.hypot(u / long, v / short);
    // The distance from the ellipse to first order.
    squares += (((reach - 1) * reach) / Math.hypot(u / long ** 2, v / short ** 2)) ** 2;
    const [nextRow, nextColumn] = points[(i + 1) % points.length]!;
    length += Math.hypot(nextRow - row, nextColumn - column);
  });
  return {
    offEllipse: Math.sqrt(squares / points.length) / radius,
    onCircle: shareOnCircle(points, { row: m.row, column: m.column, radiusPx: radius }),
    lengthRatio: length / (2 * Math.PI * radius),
  };
}

function shareOnCircle(points: Points, start: Parameters<typeof circleFit>[1]): number {
  const circle = circleFit(points, start);
  if (!circle || Math.abs(circle.radiusPx / start.radiusPx - 1) > MOST_OFF_SIZE) return 0;
  const near = points.filter(([row, column]) => {
    const reach = Math.hypot(row - circle.row, column - circle.column);
    return Math.abs(reach / circle.radiusPx - 1) < ON_CIRCLE;
  });
  return near.length / points.length;
}

/** Area, center and central second moments of a polygon, by Green's theorem. */
function moments(points: Points) {
  let [twice, row, column, rr, cc, rc] = [0, 0, 0, 0, 0, 0];
  const [r0, c0] = points[0]!;
  points.forEach(([r, c], i) => {
    const [r2, c2] = points[(i + 1) % points.length]!;
    const [a, b, d, e] = [r - r0, c - c0, r2 - r0, c2 - c0];
    const cross = b * d - e * a;
    twice += cross;
    row += (a + d) * cross;
    column += (b + e) * cross;
    rr += (a * a + a * d + d * d) * cross;
    cc += (b * b + b * e + e * e) * cross;
    rc += (a * e + 2 * a * b + 2 * d * e + d * b) * cross;
  });
  const [down, right] = [row / (3 * twice), column / (3 * twice)];
  return {
    area: Math.abs(signedArea(points)),
    row: r0 + down,
    column: c0 + right,
    rr: rr / (6 * twice) - down * down,
    cc: cc / (6 * twice) - right * right,
    rc: rc / (12 * twice) - down * right,
  };
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
