import type { Vector } from '../../src/optics/vector';

/** An ellipsoid with one axis upright, turned about it. */
export interface Ellipsoid {
  /** Middle, mm: x right, y up in the picture, z to the camera. */
  readonly center: Vector;
  /** Half-axes, mm, along x, y and z before it is turned. */
  readonly halfAxes: Vector;
  /** Turn to the left, degrees. */
  readonly turnDeg: number;
}

/** A place or direction in the ellipsoid's own axes, each scaled so that the surface is the unit sphere. */
function toUnit({ halfAxes, turnDeg }: Ellipsoid, [x, y, z]: Vector): Vector {
  const [cos, sin] = [Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)];
  return [(cos * x + sin * y) / halfAxes[0], (-sin * x + cos * y) / halfAxes[1], z / halfAxes[2]];
}

/** The unit sphere's place as the camera above sees it at x, y; null beside it. */
export function seenFromAbove(body: Ellipsoid, x: number, y: number): Vector | null {
  const [u, v] = toUnit(body, [x - body.center[0], y - body.center[1], 0]);
  const rest = 1 - u * u - v * v;
  return rest > 0 ? [u, v, Math.sqrt(rest)] : null;
}

/** Outward unit normal at a place of the unit sphere. */
export function normalAt({ halfAxes, turnDeg }: Ellipsoid, [u, v, w]: Vector): Vector {
  const [p, q, r] = [u / halfAxes[0], v / halfAxes[1], w / halfAxes[2]];
  const length = Math.hypot(p, q, r);
  const [cos, sin] = [Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)];
  return [(cos * p - sin * q) / length, (sin * p + cos * q) / length, r / length];
}

/** True when the ray from a place outside meets the ellipsoid. */
export function blocks(body: Ellipsoid, from: Vector, direction: Vector): boolean {
  const { center } = body;
  const o = toUnit(body, [from[0] - center[0], from[1] - center[1], from[2] - center[2]]);
  const d = toUnit(body, direction);
  const dd = d[0] * d[0] + d[1] * d[1] + d[2] * d[2];
  const od = o[0] * d[0] + o[1] * d[1] + o[2] * d[2];
  const oo = o[0] * o[0] + o[1] * o[1] + o[2] * o[2];
  return od < 0 && od * od > dd * (oo - 1);
}
