import { SRGB_8BIT_TO_LINEAR, srgbFromLinear } from '../optics/srgbTransfer';

/**
 * Linear sRGB of linear Display P3, rows red, green, blue; both have the white D65.
 *
 * @see CSS Color Module Level 4, section 18 (sample code), by way of CIE XYZ.
 */
const TO_SRGB = [
  [1.2249401, -0.2249402, 0],
  [-0.0420569, 1.0420571, 0],
  [-0.0196376, -0.0786361, 1.0982735],
] as const;
/** Steps of linear light told apart; the finest step of 8 bits, in the dark, is 1/3294 wide. */
const STEPS = 16_384;
const CODES = Uint8ClampedArray.from({ length: STEPS + 1 }, (_, i) => 255 * srgbFromLinear(i / STEPS));

/**
 * Turns pixels of Display P3 into sRGB, in place; colors outside sRGB are clipped. The tone curve is the same.
 *
 * @param rgba - 8 bits a channel, four channels; alpha stays.
 * @see IEC 61966-2-1 (sRGB); SMPTE EG 432-1 (primaries of P3).
 */
export function srgbFromDisplayP3(rgba: Uint8ClampedArray): void {
  for (let i = 0; i < rgba.length; i += 4) {
    const red = linearAt(rgba, i);
    const green = linearAt(rgba, i + 1);
    const blue = linearAt(rgba, i + 2);
    for (let channel = 0; channel < 3; channel++) {
      const [r, g, b] = TO_SRGB[channel as 0 | 1 | 2];
      const light = Math.min(1, Math.max(0, r * red + g * green + b * blue));
      rgba[i + channel] = CODES[Math.round(light * STEPS)] ?? 0;
    }
  }
}

function linearAt(rgba: Uint8ClampedArray, at: number): number {
  return SRGB_8BIT_TO_LINEAR[rgba[at] ?? 0] ?? 0;
}
