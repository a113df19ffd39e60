import { apertureFlux } from './apertureFlux';
import { GLOSS_GEOMETRIES, GLOSS_STANDARD_INDEX, type GlossAngleDeg } from './glossGeometry';

/**
 * Specular gloss of a GGX surface, by integrating its reflection over a gloss meter's apertures.
 *
 * About 0.2 ms; `glossUnits` interpolates and is faster.
 *
 * @param alpha - GGX roughness, 0 (perfect polish) to 1.
 * @param n - Refractive index, 1 or more.
 * @param angleDeg - Geometry of the gloss meter.
 * @returns Gloss units, 0 or more; 100 is a perfect mirror of n = 1.567 in the same geometry.
 * @throws RangeError if alpha is outside 0 to 1 or n below 1.
 * @see ISO 2813 / ASTM D523 (geometry, standard); `apertureFlux` for the integral.
 */
export function glossIntegral(alpha: number, n: number, angleDeg: GlossAngleDeg): number {
  const geometry = GLOSS_GEOMETRIES[angleDeg];
  return (100 * apertureFlux(geometry, alpha, n)) / apertureFlux(geometry, 0, GLOSS_STANDARD_INDEX);
}
