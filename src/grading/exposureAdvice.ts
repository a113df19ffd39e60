import { fresnelReflectance } from '../optics/fresnelReflectance';
import { texts } from '../texts/speech';
import type { Advice, RigNumbers } from './rigNumbers';

/** Refractive index of the reference ball: soda-lime glass (handbook value, from memory). */
const BALL_INDEX = 1.52;
/** Range of the ball's plateau that is well exposed, share of the camera's limit, and what to aim at. */
const PLATEAU = { least: 0.3, aim: 0.6, most: 0.9 };

/**
 * Whether the lamp's image lies well within what the camera can record.
 *
 * The ball's plateau is p = L·F(n_ball, θ); a perfect polish of quartz is 1.07 times as bright and of corundum
 * 1.8 times, so p aims at 0.6 of the limit. One stop is a factor of two: log₂(0.6 / p) stops.
 *
 * @param rig - Lamp and camera.
 * @returns In order, or by how many half stops to change the exposure.
 */
export function exposureAdvice({ lampRadiance, light }: RigNumbers): Advice {
  // The half-vector lies halfway to the camera: cos² of half an angle is (1 + its cosine) / 2.
  const cosHalf = Math.sqrt((1 + Math.max(-1, Math.min(1, light.direction[2]))) / 2);
  const plateau = lampRadiance * fresnelReflectance(BALL_INDEX, cosHalf);
  const share = `${Math.round(100 * plateau)} %`;
  const { exposureGood, exposureOff } = texts().rig;
  if (plateau >= PLATEAU.least && plateau <= PLATEAU.most) {
    return { about: 'exposure', inOrder: true, sentence: exposureGood(share) };
  }
  const halves = Math.max(1, Math.round(2 * Math.abs(Math.log2(PLATEAU.aim / plateau))));
  const sentence = exposureOff(plateau >= 1 ? null : share, halves, plateau > PLATEAU.most);
  return { about: 'exposure', inOrder: false, sentence };
}
