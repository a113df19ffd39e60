import { GAUSS_LEGENDRE_4 } from './gaussLegendre';
import type { Aperture, MeterGeometry } from './glossGeometry';

/** x in the plane of measurement, y across it, z along the surface normal. */
export type Vector3 = readonly [x: number, y: number, z: number];

/** Microfacet slopes along one direction that send light from one point of the source into the receptor. */
export interface ReceptorRay {
  /** Unit vector from the surface to the point of the source. */
  readonly toSource: Vector3;
  readonly cosPhi: number;
  readonly sinPhi: number;
  /** Slope at which the mirrored ray leaves the receptor's window. */
  readonly slopeLimit: number;
  /** Share of all rays; the weights of a geometry sum to 1. */
  readonly weight: number;
}

/** Directions of slope about each point of the source: more for long windows, whose ends are seen at narrow angles. */
const DIRECTIONS = 48;
const DIRECTIONS_PER_ELONGATION = 8;
const RADIANS = Math.PI / 180;

/**
 * Lays out the rays over which a reading is integrated: points of the source, and slope directions about each.
 *
 * Directions are spread as the window's own ellipse is, so that a long narrow window is sampled along its length.
 *
 * @param geometry - The receptor's window must hold the source's, or mirror rays would be lost.
 * @returns Rays with weights that sum to 1; they do not depend on roughness or index.
 * @throws RangeError if the source is wider than the receptor in either direction.
 * @see ISO 2813, apertures of source and receptor.
 */
export function receptorRays(geometry: MeterGeometry): ReceptorRay[] {
  const { angleDeg, source, receptor } = geometry;
  if (source.inPlaneDeg > receptor.inPlaneDeg || source.acrossDeg > receptor.acrossDeg) {
    throw new RangeError('The receptor must be at least as wide as the source.');
  }
  const theta = angleDeg * RADIANS;
  const directions = slopeDirections(receptor, Math.cos(theta));
  const rays: ReceptorRay[] = [];
  for (const [inPlane, inPlaneWeight] of GAUSS_LEGENDRE_4) {
    const inPlaneAngle = theta + (inPlane - 0.5) * source.inPlaneDeg * RADIANS;
    for (const [across, acrossWeight] of GAUSS_LEGENDRE_4) {
      if (across < 0.5) continue; // The other half is its mirror image.
      const acrossAngle = (across - 0.5) * source.acrossDeg * RADIANS;
      const toSource: Vector3 = [
        -Math.sin(inPlaneAngle) * Math.cos(acrossAngle),
        Math.sin(acrossAngle),
        Math.cos(inPlaneAngle) * Math.cos(acrossAngle),
      ];
      for (const { cosPhi, sinPhi, share } of directions) {
        const slopeLimit = limit(geometry, toSource, cosPhi, sinPhi);
        const weight = 2 * inPlaneWeight * acrossWeight * share;
        rays.push({ toSource, cosPhi, sinPhi, slopeLimit, weight });
      }
    }
  }
  return rays;
}

/** Directions along the ellipse of slopes that the window lets in, with the angle each stands for as a share of 2π. */
function slopeDirections({ inPlaneDeg, acrossDeg }: Aperture, cosTheta: number) {
  // A slope across the plane turns the mirrored ray by cos θ less than one in the plane.
  const elongation = acrossDeg / cosTheta / inPlaneDeg;
  const stretch = Math.max(elongation, 1 / elongation);
  const count = 4 * Math.ceil(Math.max(DIRECTIONS, DIRECTIONS_PER_ELONGATION * stretch) / 4);
  const directions = Array.from({ length: count }, (_, place) => {
    const psi = (2 * Math.PI * (place + 0.5)) / count;
    const [along, across] = [Math.cos(psi), elongation * Math.sin(psi)];
    const length = Math.hypot(along, across);
    return { cosPhi: along / length, sinPhi: across / length, share: elongation / (length * length) };
  });
  const whole = directions.reduce((sum, { share }) => sum + share, 0);
  return directions.map((direction) => ({ ...direction, share: direction.share / whole }));
}

/** Bisects for the slope at which the mirrored ray leaves the window; the mirror ray itself is inside. */
function limit(geometry: MeterGeometry, toSource: Vector3, cosPhi: number, sinPhi: number): number {
  let inside = 0;
  let outside = 2;
  for (let halving = 0; halving < 40; halving++) {
    const slope = (inside + outside) / 2;
    if (isReceived(geometry, mirrored(toSource, slope * cosPhi, slope * sinPhi))) inside = slope;
    else outside = slope;
  }
  return inside;
}

function isReceived({ angleDeg, receptor }: MeterGeometry, [x, y, z]: Vector3): boolean {
  const inPlane = Math.atan2(x, z) - angleDeg * RADIANS;
  const across = Math.asin(y);
  return (
    Math.abs(inPlane) <= (receptor.inPlaneDeg * RADIANS) / 2 &&
    Math.abs(across) <= (receptor.acrossDeg * RADIANS) / 2
  );
}

/** Mirror image of a direction in the microfacet of slopes (sx, sy). */
function mirrored([x, y, z]: Vector3, sx: number, sy: number): Vector3 {
  const share = (2 * (x * sx + y * sy + z)) / (1 + sx * sx + sy * sy);
  return [share * sx - x, share * sy - y, share - z];
}
