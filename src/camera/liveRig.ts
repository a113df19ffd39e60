import type { Rig } from '../analysis/report';
import type { Preview } from './preview';

/** Most blur of a sharp photo, standard deviation, pixels: what lens, sensor and sharpening leave. Our estimate. */
const SHARP_PX = 0.8;

/**
 * Lamp and camera as a photo taken now would tell them.
 *
 * Lamp and exposure are the frame's. A pixel of the photo covers less than one of the reduced frame, whose own pixels
 * hide how sharp the photo would be: while the frame looks sharp, its blur counts as no more than a sharp photo's.
 *
 * @param preview - The frame.
 * @param shotPx - Longer side of the photo, pixels.
 * @param isSharp - Whether the frame looks sharp.
 * @returns Null while no ball is seen.
 */
export function liveRig({ rig, widthPx, heightPx }: Preview, shotPx: number, isSharp: boolean): Rig | null {
  if (rig === null) return null;
  const factor = Math.max(1, shotPx / Math.max(widthPx, heightPx));
  const blurPx = rig.blurPx * factor;
  return { ...rig, mmPerPx: rig.mmPerPx / factor, blurPx: isSharp ? Math.min(SHARP_PX, blurPx) : blurPx };
}
