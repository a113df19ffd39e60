/** The same number in all four lanes. */
export function splat(x: f64): v128 {
  return f32x4.splat(<f32>x);
}
