import { lobeShare } from './lobeShare';
import { squareLobeShare } from './squareLobeShare';

/** Turn of a square lamp's sides, radians from right toward up, 0 to π/2; null for a round lamp. */
export type LampTurn = number | null;

/**
 * The highlight of a rough mirror under a round or square lamp.
 *
 * @param turnRad - Shape and turn of the lamp.
 * @returns Share of the lamp's radiance, 0 to 1, at slopes x (right) and y (up) in radii of the disc of the lamp's
 *   area, for a roughness in those radii, above 0.
 * @see `lobeShare` and `squareLobeShare` for the closed forms.
 */
export function lampLobe(turnRad: LampTurn): (x: number, y: number, alphaOverA: number) => number {
  if (turnRad === null) return (x, y, q) => lobeShare(Math.sqrt(x * x + y * y), q);
  const c = Math.cos(turnRad);
  const s = Math.sin(turnRad);
  return (x, y, q) => squareLobeShare(c * x + s * y, c * y - s * x, q);
}
