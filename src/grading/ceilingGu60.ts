import { glossUnits } from '../optics/glossUnits';

/**
 * Ceiling of a material: the 60° gloss that a perfect polish of it would read.
 *
 * @param n - Refractive index, 1 or more.
 * @returns Gloss units; 100 at n = 1.567.
 * @throws RangeError if n is below 1.
 * @see ISO 2813 / ASTM D523: Fresnel reflectance against that of the standard.
 */
export function ceilingGu60(n: number): number {
  return glossUnits(0, n, 60);
}
