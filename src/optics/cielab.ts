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
export function cielab(light: readonly [number, number, number]): [number, number, number] {
  const [x, y, z] = TO_XYZ.map(
    ([r, g, b], k) => (r * light[0] + g * light[1] + b * light[2]) / WHITE[k]!,
  ).map((share) => (share > (24 / 116) ** 3 ? Math.cbrt(share) : (841 / 108) * share + 16 / 116)) as [
    number,
    number,
    number,
  ];
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}
