/** Leading bits of a number's fraction by which the table is asked. */
const BITS = 11;
const STEPS = 1 << BITS;
/** Binary exponents are stored this much higher (IEEE 754, binary32). */
const BIAS = 127;

/** Middles of the steps from 1 to 2: one over each, and its logarithm. */
const MIDDLES = Float64Array.from({ length: STEPS }, (_, k) => 1 + (k + 0.5) / STEPS);
const INVERSES = MIDDLES.map((middle) => 1 / middle);
const LOGARITHMS = MIDDLES.map((middle) => Math.log(middle) - BIAS * Math.LN2);

/**
 * Puts the natural logarithm in place of every number, a few times as fast as `Math.log`: exponent, a table, and three
 * terms of the series of ln(1 + r) for what the table leaves over.
 *
 * @param values - From the least normal number, 1.2 · 10⁻³⁸, up to 3.4 · 10³⁸; not checked, for speed.
 */
export function lnInPlace(values: Float32Array): void {
  const bits = new Int32Array(values.buffer, values.byteOffset, values.length);
  for (let i = 0; i < values.length; i++) {
    const stored = bits[i]!;
    const k = (stored >>> (23 - BITS)) & (STEPS - 1);
    const r = (1 + (stored & 0x7fffff) / 0x800000) * INVERSES[k]! - 1;
    values[i] = (stored >>> 23) * Math.LN2 + LOGARITHMS[k]! + r * (1 - r * (0.5 - r / 3));
  }
}
