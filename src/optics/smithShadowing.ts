/**
 * Share of microfacets not hidden along one direction, Smith's shadowing for GGX.
 *
 * @param cosTheta - Cosine between direction and surface normal, above 0 to 1.
 * @param alpha - Roughness, unitless, 0 or more.
 * @returns 0 to 1; 1 on a smooth surface and head-on.
 * @see Walter et al. 2007, eq. 34, multiplied out.
 */
export function smithShadowing(cosTheta: number, alpha: number): number {
  const alphaSquared = alpha * alpha;
  return (2 * cosTheta) / (cosTheta + Math.sqrt(alphaSquared + (1 - alphaSquared) * cosTheta * cosTheta));
}
