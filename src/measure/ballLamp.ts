import type { Raster } from '../image/raster';
import { fresnelReflectance } from '../optics/fresnelReflectance';
import type { LampTurn } from '../optics/lampLobe';
import { combine, dot, normalize, type Vector } from '../optics/vector';
import type { Circle } from './circleFit';
import { clippedFrom } from './clippedFrom';
import { fitBallLamp, type LampFit } from './lampFit';
import type { LampSpot } from './lampSpot';

/** Everything the lamp's image in the reference ball tells. */
export interface BallLamp {
  /** Unit vector to the lamp: x right, y up, z along the camera's axis. */
  readonly direction: Vector;
  readonly angularDiameterDeg: number;
  /** Tangent of the radius of the disc, equal in area, of the surface normals that mirror the lamp. */
  readonly sourceSlope: number;
  /** Shape of the lamp. */
  readonly turnRad: LampTurn;
  /** Radiance of the lamp's image in a perfect mirror, unit of the raster. */
  readonly lampRadiance: number;
  /** The lamp's color: red, green and blue over their luminance. */
  readonly color: readonly [number, number, number];
  /** Standard deviation of the camera's point spread, pixels. */
  readonly blurPx: number;
  /** Share of the highlight's disc at which the camera was at its limit, 0 to 1. */
  readonly clippedShare: number;
}

/** Refractive index of the reference ball: soda-lime glass (handbook value, from memory). */
export const BALL_INDEX = 1.52;
/**
 * Reads lamp direction, lamp size, mirror radiance and camera blur from the highlight in a polished glass ball.
 *
 * @param crop - RGB raster around the ball in linear light.
 * @param ball - The ball's circle in the crop, radius > 6 px.
 * @param view - Unit vector from the ball to the camera.
 * @param before - How the same lamp fitted in nearly the same circle, where the search then begins.
 * @returns The reading, or null when no highlight stands out of the dark glass.
 */
export function ballLamp(crop: Raster, ball: Circle, view: Vector, before?: LampFit): BallLamp | null {
  const fit = fitBallLamp(crop, ball, view, before);
  if (!fit) return null;
  const half = fit.center;
  const direction = normalize(combine([2 * dot(half, view), half], [-1, view]));
  return {
    direction,
    angularDiameterDeg: lampDiameterDeg(fit.sourceSlope, dot(half, view)),
    sourceSlope: fit.sourceSlope,
    turnRad: fit.turnRad,
    lampRadiance: fit.height / fresnelReflectance(BALL_INDEX, dot(half, view)),
    color: lampColor(crop, fit.spot),
    blurPx: fit.blurPx,
    clippedShare: fit.clippedShare,
  };
}

/**
 * Angular diameter of the lamp, or of the disc of equal solid angle.
 *
 * Turning the normal by η turns the mirrored ray by 2η in the plane of incidence but by 2η·cos θ across it, so
 * the normals that mirror a round lamp fill an ellipse 1 / cos θ times as large: dΩ(lamp) = 4 cos θ dΩ(normal).
 *
 * @see Walter et al. 2007, eq. 14, the Jacobian of the half-vector.
 */
function lampDiameterDeg(sourceSlope: number, cosHalfAngle: number): number {
  return (4 * Math.atan(sourceSlope * Math.sqrt(cosHalfAngle)) * 180) / Math.PI;
}

/** Mean color of the highlight's middle; white when the camera was at its limit there. */
function lampColor(crop: Raster, { row: y, column: x, radiusPx }: LampSpot): [number, number, number] {
  const sums: [number, number, number] = [0, 0, 0];
  const limit = clippedFrom(crop);
  const reach = Math.max(1, 0.6 * radiusPx);
  for (let row = 0; row < crop.height; row++) {
    for (let column = 0; column < crop.width; column++) {
      if (Math.hypot(row - y, column - x) > reach) continue;
      const i = 3 * (row * crop.width + column);
      if (Math.max(crop.data[i]!, crop.data[i + 1]!, crop.data[i + 2]!) >= limit) return [1, 1, 1];
      for (let c = 0; c < 3; c++) sums[c]! += crop.data[i + c]!;
    }
  }
  const white = 0.2126 * sums[0] + 0.7152 * sums[1] + 0.0722 * sums[2];
  return [sums[0] / white, sums[1] / white, sums[2] / white];
}
