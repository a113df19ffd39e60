import { srgbFromLinear } from './srgbTransfer';
import { toneDecoder } from './toneDecoder';

/**
 * Contrast of the curve a camera may have laid over sRGB without saying so: a fifth more in the middle.
 * Common practice, no published source.
 */
export const TYPICAL_CONTRAST = 0.4;

/** A highlight as it reads when the photo is taken for plain sRGB; linear light, 1 = the camera's limit. */
export interface HighlightLevels {
  /** The highlight's height above the stone's own light. */
  readonly height: number;
  /** The stone's own light under the highlight. */
  readonly body: number;
  /** Height of the lamp's image in the ball. */
  readonly reference: number;
}

/**
 * How far an unknown tone curve can shift a highlight's height as a share of the ball's.
 *
 * Levels are read back into recorded values and decoded under curves of ± typical strength.
 *
 * @param levels - Levels above the camera's limit are taken for the limit.
 * @returns Largest relative change of height / reference, ≥ 0; 0 when both lie at the same level over black.
 * @throws RangeError if height or reference is not positive.
 */
export function toneUncertainty(
  { height, body, reference }: HighlightLevels,
  contrast: number = TYPICAL_CONTRAST,
): number {
  if (!(height > 0 && reference > 0)) throw new RangeError('Height and reference must be positive.');
  const changes = [-contrast, contrast].map((strength) => {
    const decode = toneDecoder({ contrast: strength, knee: 0, bow: 0 });
    const light = (level: number) => decode(srgbFromLinear(Math.min(1, Math.max(0, level))));
    const share = (light(body + height) - light(body)) / light(reference);
    const plain = (Math.min(1, body + height) - Math.min(1, body)) / Math.min(1, reference);
    return plain > 0 ? Math.abs(share / plain - 1) : 0;
  });
  return Math.max(...changes);
}
