import { splat } from './lanes';

/** Half the side of a square with the area of a disc of radius one. */
const HALF_SIDE: f64 = 0.886226925452758;

/**
 * The lobe of the lamp on a surface whose slope is a polynomial of second order.
 *
 * @param field - Eighteen 64-bit floats: of the slope along the tilt the factors of x, y, x², xy, y²; of that across it the
 * same; row and column of the center; sine and cosine of the tilt; sine and cosine of the turn from the tilt to the lamp's
 * sides; squared roughness over the lamp's radius; the lamp's radius, a slope.
 * @param isTilted - Slopes are of the normal's sideways part, in units of one; else in lamp radii, and the tilt is not read.
 * @param isSquare - Shape of the lamp.
 * @param columns - Samples across, `rows` of them down.
 * @param into - Shares of the lamp's radiance, 0 to 1.
 */
export function lobePlane(
  field: usize,
  isTilted: bool,
  isSquare: bool,
  columns: i32,
  rows: i32,
  into: usize,
): void {
  const x1 = splat(load<f64>(field)),
    y1 = load<f64>(field, 8);
  const xx1 = splat(load<f64>(field, 16)),
    xy1 = load<f64>(field, 24),
    yy1 = load<f64>(field, 32);
  const x2 = splat(load<f64>(field, 40)),
    y2 = load<f64>(field, 48);
  const xx2 = splat(load<f64>(field, 56)),
    xy2 = load<f64>(field, 64),
    yy2 = load<f64>(field, 72);
  const centerRow = load<f64>(field, 80),
    centerColumn = load<f64>(field, 88);
  const tiltSine = load<f64>(field, 96),
    tiltCosine = load<f64>(field, 104);
  const turnSine = splat(load<f64>(field, 112)),
    turnCosine = splat(load<f64>(field, 120));
  const q2 = load<f64>(field, 128),
    radius = splat(load<f64>(field, 136));
  const sine = splat(tiltSine),
    cosine = splat(tiltCosine);
  const first = f32x4.sub(f32x4(0, 1, 2, 3), splat(centerColumn));
  let at = into;
  for (let row = 0; row < rows; row++) {
    const y = <f64>row - centerRow;
    const level1 = splat((y1 + yy1 * y) * y + (isTilted ? tiltSine : 0));
    const level2 = splat((y2 + yy2 * y) * y);
    const slope1 = f32x4.add(x1, splat(xy1 * y));
    const slope2 = f32x4.add(x2, splat(xy2 * y));
    const end = at + ((<usize>columns) << 2);
    let x = first;
    for (let to = at; to < end; to += 16) {
      let along = f32x4.add(f32x4.mul(f32x4.add(f32x4.mul(xx1, x), slope1), x), level1);
      const across = f32x4.add(f32x4.mul(f32x4.add(f32x4.mul(xx2, x), slope2), x), level2);
      x = f32x4.add(x, splat(4));
      let scale = splat(1);
      let isLost = splat(0);
      if (isTilted) {
        const z2 = f32x4.sub(f32x4.sub(splat(1), f32x4.mul(along, along)), f32x4.mul(across, across));
        const z = f32x4.sqrt(f32x4.pmax(splat(0), z2));
        const toHalf = f32x4.add(f32x4.mul(along, sine), f32x4.mul(z, cosine));
        along = f32x4.sub(f32x4.mul(along, cosine), f32x4.mul(z, sine));
        scale = f32x4.mul(toHalf, radius);
        isLost = v128.or(f32x4.le(z2, splat(1e-4)), f32x4.le(toHalf, splat(1e-3)));
      }
      let share: v128;
      if (isSquare) {
        const per = f32x4.div(splat(1), scale);
        const u = f32x4.mul(along, per);
        const v = f32x4.mul(across, per);
        share = squareLobe(
          f32x4.sub(f32x4.mul(turnCosine, u), f32x4.mul(turnSine, v)),
          f32x4.neg(f32x4.add(f32x4.mul(turnSine, u), f32x4.mul(turnCosine, v))),
          splat(q2),
        );
      } else {
        const apart2 = f32x4.add(f32x4.mul(along, along), f32x4.mul(across, across));
        share = roundLobe(apart2, f32x4.mul(scale, scale), q2);
      }
      v128.store(to, v128.andnot(share, isLost));
    }
    at = end;
  }
}

/**
 * The same at given places.
 *
 * @param xs - Distances from the center to the right, lamp radii, of `count` places; `ys` up.
 * @param q2 - Squared roughness over the lamp's radius.
 */
export function roundLobes(xs: usize, ys: usize, count: i32, q2: f64, into: usize): void {
  const end = (<usize>count) << 2;
  for (let k: usize = 0; k < end; k += 16) {
    const x = v128.load(xs + k);
    const y = v128.load(ys + k);
    v128.store(into + k, roundLobe(f32x4.add(f32x4.mul(x, x), f32x4.mul(y, y)), splat(1), q2));
  }
}

/** The same for a square lamp, its sides turned by so much from right toward up. */
export function squareLobes(
  xs: usize,
  ys: usize,
  count: i32,
  sine: f64,
  cosine: f64,
  q2: f64,
  into: usize,
): void {
  const end = (<usize>count) << 2;
  const s = splat(sine);
  const c = splat(cosine);
  for (let k: usize = 0; k < end; k += 16) {
    const x = v128.load(xs + k);
    const y = v128.load(ys + k);
    const u = f32x4.add(f32x4.mul(c, x), f32x4.mul(s, y));
    const v = f32x4.sub(f32x4.mul(c, y), f32x4.mul(s, x));
    v128.store(into + k, squareLobe(u, v, splat(q2)));
  }
}

/** `lobeShare` in `src/optics` with numbers multiplied by `scale2`; both of its forms have the divisor h · (h + |t|). */
function roundLobe(apart2: v128, scale2: v128, q2: f64): v128 {
  const t = f32x4.add(apart2, f32x4.mul(splat(q2 - 1), scale2));
  const q4 = f32x4.mul(splat(4 * q2), scale2);
  const h = f32x4.sqrt(f32x4.add(f32x4.mul(t, t), f32x4.mul(q4, scale2)));
  const both = f32x4.add(h, f32x4.abs(t));
  const isFar = f32x4.gt(t, splat(0));
  const far = f32x4.mul(q4, scale2);
  const near = f32x4.mul(both, both);
  return f32x4.div(f32x4.mul(splat(0.5), v128.bitselect(far, near, isFar)), f32x4.mul(h, both));
}

/**
 * A square lamp's share. The GGX slope density q² / (π (q² + x² + y²)²) has a closed integral over a rectangle: with
 * G(x, y) = (x / √(q² + x²)) · atan(y / √(q² + x²)) + (y / √(q² + y²)) · atan(x / √(q² + y²))
 * it is the alternating sum of G / 2π over the four corners.
 *
 * @see Walter et al. 2007, eq. 33 (GGX); checked against SciPy's dblquad in tests/golden/squareLobe.json.
 */
function squareLobe(x: v128, y: v128, q2: v128): v128 {
  return f32x4.mul(f32x4.add(twoSides(x, y, q2), twoSides(y, x, q2)), splat(1 / (2 * Math.PI)));
}

/** What the two sides across the first direction bring. */
function twoSides(x: v128, y: v128, q2: v128): v128 {
  // atan(high / far) − atan(low / far) is the angle of the vector (far² + high · low, far · (high − low)).
  const corners = f32x4.sub(f32x4.mul(y, y), splat(HALF_SIDE * HALF_SIDE));
  const right = f32x4.sub(splat(HALF_SIDE), x);
  const rightFar2 = f32x4.add(q2, f32x4.mul(right, right));
  const rightFar = f32x4.sqrt(rightFar2);
  const left = f32x4.sub(splat(-HALF_SIDE), x);
  const leftFar2 = f32x4.add(q2, f32x4.mul(left, left));
  const leftFar = f32x4.sqrt(leftFar2);
  const side = splat(2 * HALF_SIDE);
  return f32x4.sub(
    f32x4.mul(f32x4.div(right, rightFar), angleOf(f32x4.add(rightFar2, corners), f32x4.mul(side, rightFar))),
    f32x4.mul(f32x4.div(left, leftFar), angleOf(f32x4.add(leftFar2, corners), f32x4.mul(side, leftFar))),
  );
}

/**
 * Angle of a vector whose second part is above 0, 0 to π.
 *
 * The series 2 Σ (−1)ᵏ (√2 − 1)²ᵏ⁺¹ / (2k + 1) · T₂ₖ₊₁(t) of the arctangent for |t| ≤ 1, to t¹⁵.
 *
 * @see Mason and Handscomb, Chebyshev Polynomials, 2003, section 5.2.
 */
function angleOf(along: v128, across: v128): v128 {
  const isSteep = f32x4.gt(across, f32x4.abs(along));
  const t = f32x4.div(v128.bitselect(along, across, isSteep), v128.bitselect(across, along, isSteep));
  const u = f32x4.mul(t, t);
  let sum = f32x4.sub(splat(0.021509254242363794), f32x4.mul(splat(0.003960257233003806), u));
  sum = f32x4.sub(f32x4.mul(sum, u), splat(0.05538169786943571));
  sum = f32x4.add(f32x4.mul(sum, u), splat(0.09601656395253472));
  sum = f32x4.sub(f32x4.mul(sum, u), splat(0.13892041200846567));
  sum = f32x4.add(f32x4.mul(sum, u), splat(0.19943081188139306));
  sum = f32x4.sub(f32x4.mul(sum, u), splat(0.3332953803852287));
  const angle = f32x4.mul(t, f32x4.add(f32x4.mul(sum, u), splat(0.9999992490880178)));
  const behind = v128.and(f32x4.lt(along, splat(0)), splat(Math.PI));
  return v128.bitselect(f32x4.sub(splat(Math.PI / 2), angle), f32x4.add(angle, behind), isSteep);
}
