import type { Mask } from '../image/raster';
import type { Circle } from './circleFit';

/** How far each pixel of a mask lies from where its line toward the lamp, and away from it, leaves the mask. */
export interface LampLines {
  /** Pixels; 0 outside the mask. */
  readonly towardLamp: Float32Array;
  readonly awayFromLamp: Float32Array;
}

/**
 * Follows straight lines along the lamp's direction through a mask.
 *
 * Each pixel's distance is that of its neighbor on the line and one step more; the neighbor lies between two
 * pixels and is interpolated, so long lines blur into each other a little.
 *
 * @param mask - Stones with their shadows.
 * @param lampSide - Unit vector in the picture toward the lamp: x right, y up.
 * @returns Distances, in pixels, that end at the picture's edge as well.
 */
export function lampLines(mask: Mask, lampSide: readonly [x: number, y: number]): LampLines {
  const [x, y] = lampSide;
  return {
    towardLamp: runLengths(mask, x, -y),
    awayFromLamp: runLengths(mask, -x, y),
  };
}

/** Taken when no ball tells how long shadows are, share of a line; and the most that is believed of a ball. */
const USUAL_SHADOW_SHARE = 0.3;
const MOST_SHADOW_SHARE = 0.45;

/**
 * Most that a shadow takes of its line along the light: the ball's share, since stones lie flatter than a ball.
 *
 * @param ball - The reference ball, or null.
 * @param width - Columns of the picture.
 * @returns 0 to 1.
 */
export function shadowShare(
  { towardLamp, awayFromLamp }: LampLines,
  ball: Circle | null,
  width: number,
): number {
  if (!ball) return USUAL_SHADOW_SHARE;
  const center = Math.round(ball.row) * width + Math.round(ball.column);
  const whole = (towardLamp[center] ?? 0) + (awayFromLamp[center] ?? 0);
  return whole > 0
    ? Math.min(MOST_SHADOW_SHARE, Math.max(0, 1 - (2 * ball.radiusPx) / whole))
    : USUAL_SHADOW_SHARE;
}

/** Distance from each pixel to the mask's end in one direction: `right` columns and `down` rows a step. */
function runLengths(mask: Mask, right: number, down: number): Float32Array {
  const { width, height, data } = mask;
  const lengths = new Float32Array(data.length);
  const alongColumns = Math.abs(right) >= Math.abs(down);
  const [lines, places] = alongColumns ? [width, height] : [height, width];
  const [strideLine, stridePlace] = alongColumns ? [1, width] : [width, 1];
  const [ahead, aside] = alongColumns ? [right, down] : [down, right];
  const step = Math.sign(ahead);
  const shift = aside / Math.abs(ahead);
  const pace = 1 / Math.abs(ahead);
  for (let k = 1; k < lines; k++) {
    const line = step > 0 ? lines - 1 - k : k;
    const next = (line + step) * strideLine;
    for (let place = 0; place < places; place++) {
      const i = line * strideLine + place * stridePlace;
      if (data[i] === 0) continue;
      const at = Math.min(places - 1, Math.max(0, place + shift));
      const low = Math.min(places - 2, Math.floor(at));
      const share = at - low;
      const before = lengths[next + low * stridePlace]!;
      const after = lengths[next + (low + 1) * stridePlace]!;
      lengths[i] = pace + (1 - share) * before + share * after;
    }
  }
  return lengths;
}
