import { CAMERA_TROUBLES } from '../../camera/cameraTrouble';
import { ADVICE, type AdviceCode } from '../../camera/frameAdvice';
import type { CameraStatus } from './useCamera';

interface Known {
  readonly status: CameraStatus;
  readonly advice: AdviceCode;
  /** Photo of the burst being taken; 0 while none is. */
  readonly number: number;
  /** Whether the last burst failed. */
  readonly hasFailed: boolean;
  /** Whether the page can make the picture darker. */
  readonly canDarken: boolean;
}

/** The one sentence shown and read out. */
export function cameraSentence({ status, advice, number, hasFailed, canDarken }: Known): string {
  if (status.kind === 'trouble') return CAMERA_TROUBLES[status.trouble];
  if (status.kind === 'opening') return 'Starting the camera …';
  if (number > 0) return 'Hold still: the sharpest of several photos is kept.';
  if (hasFailed) return 'The photo could not be taken: try again.';
  const way = canDarken ? 'Press “Darker”.' : 'Use the device’s own camera and set it darker.';
  const isBright = advice === 'too-bright' || advice === 'picture-too-bright';
  return isBright ? `${ADVICE[advice]} ${way}` : ADVICE[advice];
}
