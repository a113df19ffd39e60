/**
 * Density of microfacet normals about the surface normal, GGX.
 *
 * @param cosThetaM - Cosine between microfacet and surface normal, 0 to 1.
 * @param alpha - Roughness, unitless, above 0.
 * @returns Density per steradian; its integral times cosThetaM over the hemisphere is 1.
 * @throws RangeError if alpha is not above 0.
 * @see Walter et al. 2007, eq. 33.
 */
export function ggxDensity(cosThetaM: number, alpha: number): number {
  if (!(alpha > 0)) throw new RangeError(`The roughness must be above 0, not ${alpha}.`);
  const alphaSquared = alpha * alpha;
  const base = cosThetaM * cosThetaM * (alphaSquared - 1) + 1;
  return alphaSquared / (Math.PI * base * base);
}
