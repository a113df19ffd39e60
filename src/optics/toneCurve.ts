import { linearFromSrgb } from './srgbTransfer';

/**
 * How a camera's tone curve departs from sRGB's. With v the recorded value, 0 to 1, the sRGB value meant is
 * v + v(1 − v)·(bow + contrast·(1 − 2v) + knee·(1 − 2v)³): black and white stay where they are.
 */
export interface Tone {
  /** S-shape: above 0 the camera made the middle steeper, by the factor 1 / (1 − contrast / 2). */
  readonly contrast: number;
  /** S-shape near black and white, the middle left alone. */
  readonly knee: number;
  /** Above 0 the camera recorded everything darker. */
  readonly bow: number;
}

/** sRGB as the standard has it. */
export const PLAIN_TONE: Tone = { contrast: 0, knee: 0, bow: 0 };

/**
 * Linear light of a recorded value under a tone curve.
 *
 * @param v - Recorded value, 0 to 1.
 * @returns Linear light, 0 to 1; 0 for 0 and 1 for 1.
 */
export function linearThroughTone(v: number, { contrast, knee, bow }: Tone): number {
  const odd = 1 - 2 * v;
  const meant = v + v * (1 - v) * (bow + contrast * odd + knee * odd ** 3);
  return linearFromSrgb(Math.min(1, Math.max(0, meant)));
}

/**
 * Linear light of each 8-bit code under a tone curve, never falling from one code to the next.
 *
 * @returns 256 values, 0 to 1.
 */
export function toneTable(tone: Tone): Float32Array {
  const table = Float32Array.from({ length: 256 }, (_, code) => linearThroughTone(code / 255, tone));
  for (let code = 1; code < 256; code++) table[code] = Math.max(table[code]!, table[code - 1]!);
  return table;
}
