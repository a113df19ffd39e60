/**
 * Share of unpolarized light that the smooth surface of a clear solid in air mirrors.
 *
 * @param n - Refractive index of the solid, 1 or more; absorption is neglected.
 * @param cosTheta - Cosine of the angle of incidence, 0 (grazing) to 1 (head-on).
 * @returns Reflectance, 0 to 1.
 * @throws RangeError if n is below 1 or cosTheta is outside 0 to 1.
 * @see Born & Wolf, Principles of Optics, section 1.5.2 (Fresnel formulae); the form used by ISO 2813 for its gloss table.
 */
export function fresnelReflectance(n: number, cosTheta: number): number {
  if (!(n >= 1)) throw new RangeError(`The refractive index must be 1 or more, not ${n}.`);
  if (!(cosTheta >= 0 && cosTheta <= 1)) {
    throw new RangeError(`The cosine of the angle of incidence must lie in 0 to 1, not ${cosTheta}.`);
  }
  const sinSquared = 1 - cosTheta * cosTheta;
  const refracted = Math.sqrt(n * n - sinSquared);
  if (refracted + cosTheta === 0) return 1;
  const senkrecht = (cosTheta - refracted) / (cosTheta + refracted);
  const parallel = (n * n * cosTheta - refracted) / (n * n * cosTheta + refracted);
  return (senkrecht * senkrecht + parallel * parallel) / 2;
}
