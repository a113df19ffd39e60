import type { Vector } from '../../src/optics/vector';
import { type DrawnLamp, lampRays, lampRim } from './drawnLamp';

/** Share of unpolarized light that a smooth surface mirrors (Fresnel; Walter et al. 2007, eq. 22). */
export function mirrored(n: number, cosine: number): number {
  const g = Math.sqrt(n * n - 1 + cosine * cosine);
  const [plus, minus] = [g + cosine, g - cosine];
  return 0.5 * (minus / plus) ** 2 * (1 + ((cosine * plus - 1) / (cosine * minus + 1)) ** 2);
}

/** Radiance that a surface of a normal sends up to the camera from the lamp alone, its own color apart. */
export type Gloss = (normal: Vector) => number;

/** A perfect mirror: the lamp itself where the mirrored view meets it. */
export function smoothGloss(lamp: DrawnLamp, n: number): Gloss {
  const rim = lampRim(lamp);
  const [lx, ly, lz] = lamp.direction;
  return ([x, y, z]) => {
    const toLamp = 2 * z * (x * lx + y * ly + z * lz) - lz;
    return toLamp >= rim ? lamp.radiance * mirrored(n, z) : 0;
  };
}

/**
 * A microfacet surface: the sum of F·D·G / (4 n·v) over directions to the lamp, with no approximation of the lobe.
 *
 * @see Walter et al. 2007, eqs. 20 (reflection), 33 (GGX), 34 (shadowing).
 */
export function roughGloss(lamp: DrawnLamp, n: number, alpha: number): Gloss {
  const halfSlope = Math.tan((lamp.angularDiameterDeg * Math.PI) / 720);
  // Neighboring half-vectors lie 0.4 of the roughness apart: the sum is then within 1 % of the peak everywhere.
  const count = Math.round(Math.max(80, 6.25 * Math.PI * (halfSlope / alpha) ** 2));
  const { rays, solidAngle } = lampRays(lamp, count);
  const facets = rays.map((ray) => {
    const length = Math.hypot(ray[0], ray[1], ray[2] + 1);
    const half: Vector = [ray[0] / length, ray[1] / length, (ray[2] + 1) / length];
    return { ray, half, mirror: mirrored(n, half[2]) };
  });
  const alpha2 = alpha * alpha;
  const unshadowed = (cos: number) => (2 * cos) / (cos + Math.sqrt(alpha2 + (1 - alpha2) * cos * cos));
  return ([x, y, z]) => {
    let sum = 0;
    for (const { ray, half, mirror } of facets) {
      const toLamp = x * ray[0] + y * ray[1] + z * ray[2];
      const toHalf = x * half[0] + y * half[1] + z * half[2];
      if (toLamp <= 0 || toHalf <= 0) continue;
      const base = toHalf * toHalf * (alpha2 - 1) + 1;
      sum += (mirror * unshadowed(toLamp) * alpha2) / (Math.PI * base * base);
    }
    return (lamp.radiance * sum * unshadowed(z) * solidAngle) / (count * 4 * z);
  };
}
