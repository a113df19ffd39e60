import { lengthUnit, lengthWords, mmOfTyped } from '../texts/measures';
import { plainNumber } from '../texts/plainNumber';
import { texts } from '../texts/speech';
import type { Advice, RigNumbers } from './rigNumbers';

/** A pit must be seen at least so many pixels across, between the halves of its depth. */
const PX_ACROSS = 3;
/** Full width at half height of a Gaussian, in standard deviations. */
const FULL_WIDTH = 2.355;
/** Pits from this size on should be seen, mm. Our default: well below the widest pit let pass. */
const SMALLEST_PIT_MM = 0.5;

/**
 * Whether the camera is near enough to see small pits.
 *
 * The smallest pit seen is √(3² + (2.355 σ)²) pixels across: three for its two edges and floor, widened by the
 * camera's blur σ.
 *
 * @param rig - Lamp and camera.
 * @returns In order, or by how much to go closer.
 */
export function distanceAdvice({ mmPerPx, blurPx }: RigNumbers): Advice {
  const smallestMm = mmPerPx * Math.hypot(PX_ACROSS, FULL_WIDTH * blurPx);
  const { distanceGood, distanceOff } = texts().rig;
  const unitMm = mmOfTyped(1);
  const seen = [`1 ${lengthUnit()}`, plainNumber(unitMm / mmPerPx), lengthWords(smallestMm)] as const;
  if (smallestMm <= SMALLEST_PIT_MM)
    return { about: 'distance', inOrder: true, sentence: distanceGood(...seen) };
  const share = Math.floor((100 * SMALLEST_PIT_MM) / smallestMm);
  return { about: 'distance', inOrder: false, sentence: distanceOff(...seen, `${share} %`) };
}
