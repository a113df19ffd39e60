import { highlightPlace } from '../measure/highlightPlace';
import type { Vector } from '../optics/vector';
import type { StoneCrop } from './stoneCrop';

/** How near a highlight must lie to the place of the second light, and how far from the lamp's, radii of the stone. */
const NEAR = 0.25;
const FAR = 0.4;

/**
 * Tells whether a stone's highlight lies where the stone would mirror a second light rather than the lamp.
 *
 * @param crop - The stone.
 * @param highlight - Row and column of its highlight, photo pixels.
 * @param lampHalf - Unit vector halfway between lamp and camera, z to the camera.
 * @param otherHalves - The same of every second light.
 * @returns True when a second light's place is near and the lamp's is far.
 */
export function mirrorsSecondLight(
  crop: StoneCrop,
  highlight: { readonly row: number; readonly column: number },
  lampHalf: Vector,
  otherHalves: readonly Vector[],
): boolean {
  const apart = (half: Vector) => {
    const place = highlightPlace(crop.mask, half);
    const [row, column] = crop.toPhoto(place.row, place.column);
    return Math.hypot(row - highlight.row, column - highlight.column) / (place.radiusPx * crop.factor);
  };
  return apart(lampHalf) > FAR && otherHalves.some((half) => apart(half) < NEAR);
}
