import { finenessWords } from '../texts/measures';
import { plainNumber } from '../texts/plainNumber';
import { texts } from '../texts/speech';
import type { Advice, RigNumbers } from './rigNumbers';

/** Blur of a camera in focus, standard deviation in pixels: lens, sensor and sharpening together rarely exceed it. */
const IN_FOCUS_PX = 1.3;

/**
 * Whether the ball's highlight, whose edge is sharp in truth, is sharp in the photo.
 *
 * @param rig - Lamp and camera.
 * @returns In order, or that the photo is out of focus.
 */
export function focusAdvice({ blurPx, mmPerPx }: RigNumbers): Advice {
  const { focusGood, focusOff } = texts().rig;
  const blur = [plainNumber(blurPx), finenessWords(blurPx * mmPerPx)] as const;
  if (blurPx <= IN_FOCUS_PX) return { about: 'focus', inOrder: true, sentence: focusGood(...blur) };
  return { about: 'focus', inOrder: false, sentence: focusOff(...blur) };
}
