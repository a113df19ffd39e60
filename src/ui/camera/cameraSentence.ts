import type { AdviceCode } from '../../camera/frameAdvice';
import { texts } from '../../texts/speech';
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
  const words = texts().camera;
  if (status.kind === 'trouble') return words.troubles[status.trouble];
  if (status.kind === 'opening') return words.starting;
  if (number > 0) return words.holdStill;
  if (hasFailed) return words.failed;
  const way = canDarken ? words.pressDarker : words.setDarker;
  const isBright = advice === 'too-bright' || advice === 'picture-too-bright';
  return isBright ? `${words.advice[advice]} ${way}` : words.advice[advice];
}
