import type { Raster } from '../image/raster';
import { BALL_INDEX, type BallLamp } from '../measure/ballLamp';
import { clippedPatches } from '../measure/clippedPatches';
import { tooDark } from '../measure/tooDark';
import { fresnelReflectance } from '../optics/fresnelReflectance';

/** How a frame is exposed. */
export interface FrameLight {
  readonly tooDark: boolean;
  /** Share of the frame at the camera's limit, 0 to 1. */
  readonly clipped: number;
  /** Share of the lamp's image in the ball at the camera's limit, 0 to 1; null without a ball. */
  readonly lampClipped: number | null;
}

/**
 * Reads the exposure of a frame, by the same measures as the checks of a photo.
 *
 * @param small - RGB raster of the frame in linear light.
 * @param lamp - The lamp as the ball mirrors it; null without a ball.
 */
export function frameLight(small: Raster, lamp: BallLamp | null): FrameLight {
  const highlight = lamp && lamp.lampRadiance * fresnelReflectance(BALL_INDEX, 1);
  return {
    tooDark: tooDark(small, highlight),
    clipped: clippedPatches(small).share,
    lampClipped: lamp?.clippedShare ?? null,
  };
}
