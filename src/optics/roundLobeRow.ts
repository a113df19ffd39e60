/**
 * `lobeShare` at many places, without a call for each.
 *
 * @param xs - Distances from the center to the right, in radii of the lamp's image.
 * @param ys - Distances up or down.
 * @param alphaOverA - GGX roughness over that radius, above 0.
 * @param into - Overwritten with shares of the lamp's radiance, 0 to 1; its length is the number of places.
 */
export function roundLobeRow(
  xs: Float64Array,
  ys: Float64Array,
  alphaOverA: number,
  into: Float64Array,
): void {
  const qq = alphaOverA * alphaOverA;
  for (let k = 0; k < into.length; k++) {
    const x = xs[k]!;
    const y = ys[k]!;
    const t = qq + x * x + y * y - 1;
    const h = Math.sqrt(t * t + 4 * qq);
    // Two forms of the same value: the first loses no digits far outside the disc.
    into[k] = t > 0 ? (2 * qq) / (h * (h + t)) : 0.5 - (0.5 * t) / h;
  }
}
