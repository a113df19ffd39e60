import { luminance } from '../image/luminance';
import { Refusal } from '../image/notice';
import type { Photo } from '../image/photo';
import type { Raster } from '../image/raster';
import { sharpestEdge } from '../measure/sharpestEdge';
import { tooDark } from '../measure/tooDark';

/** A photo whose sharpest edge is blurred by more than this is refused, pixels of the small picture. */
const MOST_BLUR_PX = 2.4;
/** From this blur on a ball that was not found is lost in it; photos in focus have 0.4 to 1.5. */
const BALL_LOST_PX = 1.8;
/** Fewer pixels on the shorter side than a hand's breadth of tray has at four pixels per millimeter. */
const LEAST_SIDE_PX = 400;

/**
 * Refuses a photo in which nothing can be measured, and says what is wrong with it rather than that the ball is missing.
 *
 * @param photo - Its size.
 * @param small - RGB raster of the whole photo in linear light.
 * @param ballLost - True when a ball was looked for in vain.
 * @throws Refusal `out-of-focus`, `too-dark` or `low-resolution`.
 */
export function refuseBlindPhoto(
  photo: Pick<Photo, 'widthPx' | 'heightPx'>,
  small: Raster,
  ballLost: boolean,
): void {
  const blurPx = sharpestEdge(luminance(small));
  if (blurPx !== null && blurPx > (ballLost ? BALL_LOST_PX : MOST_BLUR_PX)) throw new Refusal('out-of-focus');
  if (ballLost && tooDark(small, null)) throw new Refusal('too-dark');
  if (ballLost && Math.min(photo.widthPx, photo.heightPx) < LEAST_SIDE_PX)
    throw new Refusal('low-resolution');
}
