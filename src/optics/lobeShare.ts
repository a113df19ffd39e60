/**
 * Share of a round lamp's radiance that a rough mirror shows at a distance from the highlight's center.
 *
 * The slope density of GGX, q² / (π (q² + r²)²), is the density of a uniformly covered sphere seen by
 * stereographic projection. Projection keeps circles, so the lamp's disc is a spherical cap and the
 * integral over it is the cap's share of the sphere: a closed form, exact for every argument.
 * With t = q² + v² − 1 it is ½ (1 − t / √(t² + 4q²)). At v = 0 it is 1 / (1 + q²); as q → 0 it is the
 * sharp disc, 1 inside and 0 outside.
 *
 * @param uOverA - v, distance from the center in radii of the lamp's image, any finite number.
 * @param alphaOverA - q, GGX roughness over the half-vector radius of the lamp, above 0; not checked, for speed.
 * @returns 0 to 1.
 * @see Walter et al. 2007, eq. 33 (GGX); derived in this file, checked against SciPy's dblquad in tests/golden/optics.json.
 */
export function lobeShare(uOverA: number, alphaOverA: number): number {
  const t = alphaOverA * alphaOverA + uOverA * uOverA - 1;
  const twoQ = 2 * alphaOverA;
  const h = Math.sqrt(t * t + twoQ * twoQ);
  // Two forms of the same value: the first loses no digits far outside the disc.
  return t > 0 ? (0.5 * twoQ * twoQ) / (h * (h + t)) : 0.5 * (1 - t / h);
}
