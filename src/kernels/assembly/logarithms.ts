import { splat } from './lanes';

/** Binary exponents are stored this much higher, and the fraction's bits (IEEE 754, binary32). */
const BIAS = 127;
const FRACTION = 0x7fffff;
/** Parts of ln 2: the first has so few digits that its products with exponents are exact. */
const LN2_HIGH: f64 = 0.693359375;
const LN2_LOW: f64 = Math.LN2 - 0.693359375;

/**
 * Puts the natural logarithm in place of each of `count` normal numbers above 0.
 *
 * With m from √½ to √2 and s = (m − 1) / (m + 1), ln m = 2 (s + s³/3 + s⁵/5 + …); the first term left out, 2 s¹¹/11, is
 * 7 · 10⁻¹⁰ at most.
 */
export function logarithms(values: usize, count: i32): void {
  const end = values + ((<usize>count) << 2);
  const one = splat(1);
  for (let at = values; at < end; at += 16) {
    const bits = v128.load(at);
    const fraction = v128.or(v128.and(bits, i32x4.splat(FRACTION)), i32x4.splat(BIAS << 23));
    const isHigh = f32x4.gt(fraction, splat(Math.SQRT2));
    const m = v128.bitselect(f32x4.mul(fraction, splat(0.5)), fraction, isHigh);
    // True is all ones, which is −1.
    const stored = i32x4.sub(i32x4.shr_u(bits, 23), isHigh);
    const exponent = f32x4.convert_i32x4_s(i32x4.sub(stored, i32x4.splat(BIAS)));
    const rest = f32x4.sub(m, one);
    const s = f32x4.div(rest, f32x4.add(m, one));
    const s2 = f32x4.mul(s, s);
    let sum = f32x4.add(f32x4.mul(splat(1.0 / 9), s2), splat(1.0 / 7));
    sum = f32x4.add(f32x4.mul(sum, s2), splat(1.0 / 5));
    sum = f32x4.add(f32x4.mul(sum, s2), splat(1.0 / 3));
    // 2 s = rest − s · rest, which keeps the digits near m = 1.
    const higher = f32x4.mul(f32x4.mul(sum, s2), f32x4.add(s, s));
    const ofFraction = f32x4.sub(rest, f32x4.sub(f32x4.mul(s, rest), higher));
    const low = f32x4.add(f32x4.mul(exponent, splat(LN2_LOW)), ofFraction);
    v128.store(at, f32x4.add(f32x4.mul(exponent, splat(LN2_HIGH)), low));
  }
}
