/** Linear sRGB to CIE XYZ under D65. Source: IEC 61966-2-1. */
const TO_XYZ = [
  [0.4124, 0.3576, 0.1805],
  [0.2126, 0.7152, 0.0722],
  [0.0193, 0.1192, 0.9505],
] as const;
/** The white of D65, which linear sRGB (1, 1, 1) maps to. */
const WHITE = TO_XYZ.map(([r, g, b]) => r + g + b);

/**
 * Lightness L* (0 to 100 for shares of 0 to 1) and the color axes a* (green to red) and b* (blue to yellow).
 *
 * @param light - Linear red, green and blue as shares of white, ≥ 0; above 1 is allowed.
 * @see CIE 15:2004, section 8.2.1.
 */
export function cielab([r, g, b]: readonly [number, number, number]): [number, number, number] {
  const x = response(0, r, g, b);
  const y = response(1, r, g, b);
  const z = response(2, r, g, b);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

/** Where the cube root gives way to a straight line. */
const LINE_BELOW = (24 / 116) ** 3;

function response(k: 0 | 1 | 2, r: number, g: number, b: number): number {
  const row = TO_XYZ[k];
  const share = (row[0] * r + row[1] * g + row[2] * b) / WHITE[k]!;
  return share > LINE_BELOW ? Math.cbrt(share) : (841 / 108) * share + 16 / 116;
}
