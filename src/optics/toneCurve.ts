/**
 * The contrast curve a camera laid over sRGB. An sRGB value v, 0 to 1, was recorded as
 * v − v(1 − v)·(bow + contrast·(1 − 2v) + knee·(1 − 2v)³): black and white stay where they are. With contrast
 * alone it is the mean of v and the smoothstep 3v² − 2v³, weighted by contrast.
 */
export interface Tone {
  /** S-shape: above 0 the camera made the middle steeper, by the factor 1 + contrast / 2. */
  readonly contrast: number;
  /** S-shape near black and white, the middle left alone. */
  readonly knee: number;
  /** Above 0 the camera recorded everything darker. */
  readonly bow: number;
}

/** sRGB as the standard has it. */
export const PLAIN_TONE: Tone = { contrast: 0, knee: 0, bow: 0 };

/**
 * Recorded value of an sRGB value under a tone curve.
 *
 * @param v - sRGB value, 0 to 1.
 * @returns 0 to 1.
 */
export function recordThroughTone(v: number, { contrast, knee, bow }: Tone): number {
  const odd = 1 - 2 * v;
  const recorded = v - v * (1 - v) * (bow + contrast * odd + knee * odd ** 3);
  return Math.min(1, Math.max(0, recorded));
}
