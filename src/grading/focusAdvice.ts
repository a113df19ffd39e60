import { plainNumber } from './plainNumber';
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
  const blur = `Edges are ${plainNumber(blurPx)} pixels soft, ${plainNumber(1000 * blurPx * mmPerPx)} µm on the stones`;
  if (blurPx <= IN_FOCUS_PX) return { about: 'focus', inOrder: true, sentence: `${blur}: in focus.` };
  return {
    about: 'focus',
    inOrder: false,
    sentence: `${blur}: focus on the stones, hold the camera still and wipe the lens.`,
  };
}
