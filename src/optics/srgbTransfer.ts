/**
 * Linear light of an sRGB-encoded value.
 *
 * @param v - Encoded value, 0 to 1.
 * @returns Linear light, 0 to 1.
 * @see IEC 61966-2-1:1999, section 5.2 (component transfer function).
 */
export function linearFromSrgb(v: number): number {
  return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
}

/**
 * sRGB encoding of linear light; the inverse of `linearFromSrgb`.
 *
 * @param linear - Linear light, 0 to 1.
 * @returns Encoded value, 0 to 1.
 * @see IEC 61966-2-1:1999, section 5.2 (component transfer function).
 */
export function srgbFromLinear(linear: number): number {
  return linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
}

/** Linear light of each 8-bit sRGB code, 0 to 1. */
export const SRGB_8BIT_TO_LINEAR: Float32Array = Float32Array.from({ length: 256 }, (_, code) =>
  linearFromSrgb(code / 255),
);
