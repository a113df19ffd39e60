/** Half the side of a square with the area of a disc of radius one. */
const HALF_SIDE = Math.sqrt(Math.PI) / 2;

/**
 * Shares of a square lamp's radiance that a rough mirror shows at many places beside the highlight's center; exact to
 * 4·10⁻⁸, as its arctangent.
 *
 * The GGX slope density q² / (π (q² + x² + y²)²) has a closed integral over a rectangle. With
 * G(x, y) = (x / √(q² + x²)) · atan(y / √(q² + x²)) + (y / √(q² + y²)) · atan(x / √(q² + y²))
 * it is the alternating sum of G / 2π over the four corners.
 *
 * @param xs - Distances from the center to the right, in radii of the disc of the lamp's area.
 * @param ys - Distances up.
 * @param turnRad - Turn of the lamp's sides.
 * @param alphaOverA - GGX roughness over that radius, above 0.
 * @param into - Overwritten with shares of the lamp's radiance, 0 to 1; its length is the number of places.
 * @see Walter et al. 2007, eq. 33 (GGX); checked against SciPy's dblquad in tests/golden/squareLobe.json.
 */
export function squareLobeRow(
  xs: Float64Array,
  ys: Float64Array,
  turnRad: number,
  alphaOverA: number,
  into: Float64Array,
): void {
  const c = Math.cos(turnRad);
  const s = Math.sin(turnRad);
  const q2 = alphaOverA * alphaOverA;
  for (let k = 0; k < into.length; k++) {
    const x = c * xs[k]! + s * ys[k]!;
    const y = c * ys[k]! - s * xs[k]!;
    into[k] = (twoSides(x, y, q2) + twoSides(y, x, q2)) / (2 * Math.PI);
  }
}

/** What the two sides across the first direction bring. */
function twoSides(x: number, y: number, q2: number): number {
  // atan(high / far) − atan(low / far) is the angle of the vector (far² + high · low, far · (high − low)).
  const corners = y * y - HALF_SIDE * HALF_SIDE;
  const right = HALF_SIDE - x;
  const rightFar2 = q2 + right * right;
  const rightFar = Math.sqrt(rightFar2);
  const left = -HALF_SIDE - x;
  const leftFar2 = q2 + left * left;
  const leftFar = Math.sqrt(leftFar2);
  return (
    (right / rightFar) * angleOf(rightFar2 + corners, 2 * HALF_SIDE * rightFar) -
    (left / leftFar) * angleOf(leftFar2 + corners, 2 * HALF_SIDE * leftFar)
  );
}

/**
 * Angle of a vector whose second part is above 0, 0 to π.
 *
 * The series 2 Σ (−1)ᵏ (√2 − 1)²ᵏ⁺¹ / (2k + 1) · T₂ₖ₊₁(t) of the arctangent for |t| ≤ 1, to t¹⁵.
 *
 * @see Mason and Handscomb, Chebyshev Polynomials, 2003, section 5.2.
 */
function angleOf(along: number, across: number): number {
  const isSteep = across > Math.abs(along);
  const t = isSteep ? along / across : across / along;
  const u = t * t;
  const v = u * u;
  const angle =
    t *
    (0.9999992490880178 -
      0.3332953803852287 * u +
      (0.19943081188139306 - 0.13892041200846567 * u) * v +
      (0.09601656395253472 -
        0.05538169786943571 * u +
        (0.021509254242363794 - 0.003960257233003806 * u) * v) *
        (v * v));
  if (isSteep) return Math.PI / 2 - angle;
  return along < 0 ? angle + Math.PI : angle;
}
