import { GAUSS_LEGENDRE_4 } from './gaussLegendre';
import { type GlossAngleDeg, RECEPTOR_APERTURES, SOURCE_APERTURE } from './glossGeometry';

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

const DIRECTIONS = 48;
const RADIANS = Math.PI / 180;

/**
 * Lays out the rays over which a gloss reading is integrated: points of the source, and slope directions about each.
 *
 * @param angleDeg - Geometry of the gloss meter.
 * @returns Rays with weights that sum to 1; they do not depend on roughness or index.
 * @see ISO 2813, apertures of source and receptor.
 */
export function receptorRays(angleDeg: GlossAngleDeg): ReceptorRay[] {
  const rays: ReceptorRay[] = [];
  const theta = angleDeg * RADIANS;
  for (const [inPlane, inPlaneWeight] of GAUSS_LEGENDRE_4) {
    const inPlaneAngle = theta + (inPlane - 0.5) * SOURCE_APERTURE.inPlaneDeg * RADIANS;
    for (const [across, acrossWeight] of GAUSS_LEGENDRE_4) {
      if (across < 0.5) continue; // The other half is its mirror image.
      const acrossAngle = (across - 0.5) * SOURCE_APERTURE.acrossDeg * RADIANS;
      const toSource: Vector3 = [
        -Math.sin(inPlaneAngle) * Math.cos(acrossAngle),
        Math.sin(acrossAngle),
        Math.cos(inPlaneAngle) * Math.cos(acrossAngle),
      ];
      rays.push(...raysFrom(angleDeg, toSource, 2 * inPlaneWeight * acrossWeight));
    }
  }
  return rays;
}

function raysFrom(angleDeg: GlossAngleDeg, toSource: Vector3, weight: number): ReceptorRay[] {
  return Array.from({ length: DIRECTIONS }, (_, direction) => {
    const phi = (2 * Math.PI * (direction + 0.5)) / DIRECTIONS;
    const [cosPhi, sinPhi] = [Math.cos(phi), Math.sin(phi)];
    const slopeLimit = limit(angleDeg, toSource, cosPhi, sinPhi);
    return { toSource, cosPhi, sinPhi, slopeLimit, weight: weight / DIRECTIONS };
  });
}

/** Bisects for the slope at which the mirrored ray leaves the window; the mirror ray itself is inside. */
function limit(angleDeg: GlossAngleDeg, toSource: Vector3, cosPhi: number, sinPhi: number): number {
  let inside = 0;
  let outside = 2;
  for (let halving = 0; halving < 40; halving++) {
    const slope = (inside + outside) / 2;
    if (isReceived(angleDeg, mirrored(toSource, slope * cosPhi, slope * sinPhi))) inside = slope;
    else outside = slope;
  }
  return inside;
}

function isReceived(angleDeg: GlossAngleDeg, [x, y, z]: Vector3): boolean {
  const { inPlaneDeg, acrossDeg } = RECEPTOR_APERTURES[angleDeg];
  const inPlane = Math.atan2(x, z) - angleDeg * RADIANS;
  const across = Math.asin(y);
  return Math.abs(inPlane) <= (inPlaneDeg * RADIANS) / 2 && Math.abs(across) <= (acrossDeg * RADIANS) / 2;
}

/** Mirror image of a direction in the microfacet of slopes (sx, sy). */
function mirrored([x, y, z]: Vector3, sx: number, sy: number): Vector3 {
  const share = (2 * (x * sx + y * sy + z)) / (1 + sx * sx + sy * sy);
  return [share * sx - x, share * sy - y, share - z];
}
