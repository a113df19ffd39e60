import { combine, dot, normalize, type Vector } from '../optics/vector';

/**
 * How far a lamp is taken to stand from the tray, mm. The ball tells where the lamp is and how large it looks, not
 * how far it is. Common practice: a desk lamp stands 0.4 to 1 m away; for all of these 650 mm leaves
 * about half of the error, or less, that taking it as infinitely far would bring.
 */
export const LAMP_DISTANCE_MM = 650;

/** A lamp as seen from one place. */
export interface SeenLamp {
  /** Unit vector to the lamp: x right, y up, z to the camera. */
  readonly direction: Vector;
  /** Half-vector radius. */
  readonly sourceSlope: number;
}

/**
 * The lamp as it is seen from a place in the tray, when it is known how it is seen from the ball.
 *
 * A lamp at 650 mm looks a sixth larger to a stone 100 mm nearer, and stands some degrees elsewhere.
 *
 * @param atBall - The lamp as the ball mirrors it.
 * @param offsetMm - From the ball to the place, x right and y up.
 * @param views - Unit vectors to the camera, at the ball and at the place.
 * @see The half-vector's Jacobian, Walter et al. 2007, eq. 14, for 1 / √cos θ between a lamp and its half-vector radius.
 */
export function lampSeenFrom(
  atBall: SeenLamp,
  offsetMm: readonly [right: number, up: number],
  views: { readonly ball: Vector; readonly place: Vector },
): SeenLamp {
  const offset: Vector = [offsetMm[0] / LAMP_DISTANCE_MM, offsetMm[1] / LAMP_DISTANCE_MM, 0];
  const way = combine([1, atBall.direction], [-1, offset]);
  const direction = normalize(way);
  const nearness = 1 / Math.sqrt(dot(way, way));
  const cosHalf = (lamp: Vector, view: Vector) => Math.sqrt((1 + dot(lamp, view)) / 2);
  const turn = Math.sqrt(cosHalf(atBall.direction, views.ball) / cosHalf(direction, views.place));
  return { direction, sourceSlope: atBall.sourceSlope * nearness * turn };
}
