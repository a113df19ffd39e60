import { cross, normalize, type Vector } from '../../src/optics/vector';

/** A round lamp of even radiance, far away. */
export interface DrawnLamp {
  /** Unit vector toward its middle. */
  readonly direction: Vector;
  readonly angularDiameterDeg: number;
  /** Radiance, 1 = the camera's limit. */
  readonly radiance: number;
}

/** The lamp at an angle off the camera's axis, and turned around it to the left from the x axis. */
export function lampAt(
  offAxisDeg: number,
  aroundDeg: number,
  angularDiameterDeg: number,
  radiance: number,
): DrawnLamp {
  const [off, around] = [(offAxisDeg * Math.PI) / 180, (aroundDeg * Math.PI) / 180];
  const direction: Vector = [
    Math.sin(off) * Math.cos(around),
    Math.sin(off) * Math.sin(around),
    Math.cos(off),
  ];
  return { direction, angularDiameterDeg, radiance };
}

/** Cosine of half the lamp's angle. */
export const lampRim = ({ angularDiameterDeg }: DrawnLamp) => Math.cos((angularDiameterDeg * Math.PI) / 360);

/** Directions evenly spread over the lamp's solid angle: a sunflower's spiral on the spherical cap. */
export function lampRays(
  lamp: DrawnLamp,
  count: number,
): { readonly rays: Vector[]; readonly solidAngle: number } {
  const height = 1 - lampRim(lamp);
  const across = normalize(cross(Math.abs(lamp.direction[0]) < 0.9 ? [1, 0, 0] : [0, 1, 0], lamp.direction));
  const other = cross(lamp.direction, across);
  const rays = Array.from({ length: count }, (_, k): Vector => {
    const cos = 1 - (height * (k + 0.5)) / count;
    const sin = Math.sqrt(1 - cos * cos);
    const angle = k * Math.PI * (3 - Math.sqrt(5));
    const [a, b] = [sin * Math.cos(angle), sin * Math.sin(angle)];
    const at = (i: 0 | 1 | 2) => cos * lamp.direction[i] + a * across[i] + b * other[i];
    return [at(0), at(1), at(2)];
  });
  return { rays, solidAngle: 2 * Math.PI * height };
}
