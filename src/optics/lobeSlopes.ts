/** Slopes of `lobeShare` with respect to its two arguments. */
export interface LobeSlopes {
  /** ∂f/∂v, v the distance in radii of the lamp's image. */
  readonly byDistance: number;
  /** ∂f/∂q, q the roughness over the lamp's half-vector radius. */
  readonly byRoughness: number;
}

/**
 * How fast `lobeShare` changes with distance and with roughness; for least-squares fits.
 *
 * @param uOverA - Distance from the center in radii of the lamp's image, any finite number.
 * @param alphaOverA - GGX roughness over the half-vector radius of the lamp, above 0; not checked, for speed.
 * @returns Both partial derivatives, unitless.
 * @see `lobeShare`: f = ½ (1 − t/h), h² = t² + 4q², so df = −(4q² dt − 4qt dq) / (2h³) with dt = 2v dv + 2q dq.
 */
export function lobeSlopes(uOverA: number, alphaOverA: number): LobeSlopes {
  const q = alphaOverA;
  const t = q * q + uOverA * uOverA - 1;
  const hSquared = t * t + 4 * q * q;
  const scale = (2 * q) / (hSquared * Math.sqrt(hSquared));
  return {
    byDistance: -2 * q * uOverA * scale,
    byRoughness: (t - 2 * q * q) * scale,
  };
}
