import { lobeShare } from './lobeShare';

/**
 * Share of a disc source's radiance that a rough mirror sends toward the camera, f(u; α, a).
 *
 * @param u - Slope of the surface away from the mirroring normal, unitless, any finite number.
 * @param alpha - GGX roughness, unitless, above 0.
 * @param a - Half-vector radius of the source: tangent of a quarter of its full angular diameter, above 0.
 * @returns 0 to 1; a² / (a² + α²) at u = 0.
 * @throws RangeError if alpha or a is not above 0.
 * @see `lobeShare` for the closed form.
 */
export function discLobe(u: number, alpha: number, a: number): number {
  if (!(alpha > 0)) throw new RangeError(`The roughness must be above 0, not ${alpha}.`);
  if (!(a > 0)) throw new RangeError(`The source's half-vector radius must be above 0, not ${a}.`);
  return lobeShare(u / a, alpha / a);
}
