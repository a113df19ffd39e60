import type { Rig } from '../analysis/report';

/**
 * A remembered rig in the pixels of a reduced frame, the camera taken to frame the tray as it did then.
 *
 * @param rig - In pixels of the photo it was remembered from.
 * @param shotPx - Longer side of a photo taken now, pixels; stands in where the rig does not know its photo's size.
 * @param framePx - Longer side of the frame, pixels.
 * @returns The rig with scale and blur of the frame.
 */
export function rigInFrame(rig: Rig, shotPx: number, framePx: number): Rig {
  const thenPx = rig.scene ? Math.max(rig.scene.widthPx, rig.scene.heightPx) : shotPx;
  const factor = thenPx / framePx;
  return { ...rig, mmPerPx: rig.mmPerPx * factor, blurPx: rig.blurPx / factor };
}
