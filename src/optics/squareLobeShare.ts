/** Half the side of a square with the area of a disc of radius one. */
const HALF_SIDE = Math.sqrt(Math.PI) / 2;

/**
 * Share of a square lamp's radiance that a rough mirror shows at a place beside the highlight's center.
 *
 * The GGX slope density q² / (π (q² + x² + y²)²) has a closed integral over a rectangle. With
 * G(x, y) = (x / √(q² + x²)) · atan(y / √(q² + x²)) + (y / √(q² + y²)) · atan(x / √(q² + y²))
 * it is the alternating sum of G / 2π over the four corners.
 *
 * @param x - Distance from the center along one side of the lamp's image, in radii of the disc of equal area.
 * @param y - The same along the other side.
 * @param alphaOverA - q, GGX roughness over that radius, above 0; not checked, for speed.
 * @returns 0 to 1.
 * @see Walter et al. 2007, eq. 33 (GGX); checked against SciPy's dblquad in tests/golden/squareLobe.json.
 */
export function squareLobeShare(x: number, y: number, alphaOverA: number): number {
  const q2 = alphaOverA * alphaOverA;
  const left = -HALF_SIDE - x;
  const right = HALF_SIDE - x;
  const low = -HALF_SIDE - y;
  const high = HALF_SIDE - y;
  const rootLeft = Math.sqrt(q2 + left * left);
  const rootRight = Math.sqrt(q2 + right * right);
  const rootLow = Math.sqrt(q2 + low * low);
  const rootHigh = Math.sqrt(q2 + high * high);
  const across =
    (right / rootRight) * angleBetween(low, high, rootRight) -
    (left / rootLeft) * angleBetween(low, high, rootLeft);
  const along =
    (high / rootHigh) * angleBetween(left, right, rootHigh) -
    (low / rootLow) * angleBetween(left, right, rootLow);
  return (across + along) / (2 * Math.PI);
}

/** atan(to / far) − atan(from / far) for to > from, in one arctangent. */
const angleBetween = (from: number, to: number, far: number) =>
  Math.atan2(far * (to - from), far * far + to * from);
