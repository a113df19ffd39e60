import { fresnelReflectance } from './fresnelReflectance';
import { GAUSS_LEGENDRE_4 } from './gaussLegendre';
import type { MeterGeometry } from './glossGeometry';
import { type ReceptorRay, receptorRays } from './receptorRays';
import { smithShadowing } from './smithShadowing';

const layouts = new WeakMap<MeterGeometry, readonly ReceptorRay[]>();

/**
 * Share of the source's light that a flat GGX surface mirrors into the receptor of an instrument.
 *
 * Along every slope direction r = α √(p / (1 − p)) turns the slope density into a uniform one in p, so a few
 * points from the mirror ray to the window's edge integrate it at any roughness. About 0.2 ms once the rays of a
 * geometry are laid out; they are kept for as long as the geometry object itself.
 *
 * @param geometry - Angle and apertures; the receptor holds the source.
 * @param alpha - GGX roughness, 0 (perfect polish) to 1.
 * @param n - Refractive index, 1 or more.
 * @returns 0 to 1; Fresnel's reflectance at roughness 0. Light that the body scatters is not in it.
 * @throws RangeError if alpha is outside 0 to 1, n below 1 or the receptor narrower than the source.
 * @see Walter et al. 2007, eqs. 20, 33, 34 (reflection, GGX, Smith).
 */
export function apertureFlux(geometry: MeterGeometry, alpha: number, n: number): number {
  if (!(alpha >= 0 && alpha <= 1)) throw new RangeError(`The roughness must lie in 0 to 1, not ${alpha}.`);
  let rays = layouts.get(geometry);
  if (!rays) {
    rays = receptorRays(geometry);
    layouts.set(geometry, rays);
  }
  let sum = 0;
  for (const ray of rays) {
    const limitSquared = ray.slopeLimit * ray.slopeLimit;
    const received = limitSquared / (alpha * alpha + limitSquared);
    const lit = smithShadowing(ray.toSource[2], alpha);
    let along = 0;
    for (let k = 0; k < GAUSS_LEGENDRE_4.length; k++) {
      const [place, weight] = GAUSS_LEGENDRE_4[k]!;
      const p = place * received;
      along += weight * facetReflection(ray, alpha * Math.sqrt(p / (1 - p)), alpha, n, lit);
    }
    sum += ray.weight * received * along;
  }
  return sum;
}

/** F G (h·i) / (cos i · cos h): what one microfacet adds, per unit of slope density; `lit` is G toward the source. */
function facetReflection(ray: ReceptorRay, slope: number, alpha: number, n: number, lit: number): number {
  const [x, y, z] = ray.toSource;
  const sx = slope * ray.cosPhi;
  const sy = slope * ray.sinPhi;
  const lengthSquared = 1 + slope * slope;
  const projected = x * sx + y * sy + z;
  const cosOut = (2 * projected) / lengthSquared - z;
  const cosHalf = projected / Math.sqrt(lengthSquared);
  const reflectance = fresnelReflectance(n, Math.min(1, cosHalf));
  // (h·i) / (cos i · cos h) = projected / z
  return (reflectance * lit * smithShadowing(cosOut, alpha) * projected) / z;
}
