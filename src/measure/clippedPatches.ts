import type { Raster } from '../image/raster';
import { type BrightPatch, brightPatches } from './brightPatches';
import { clippedPixels } from './clippedPixels';

/** Where a picture is at the camera's limit. */
export interface ClippedPatches {
  /** Share of the picture. */
  readonly share: number;
  /** Touching clipped pixels, largest first. */
  readonly patches: readonly BrightPatch[];
}

/**
 * Places at which the camera was at its limit in any channel.
 *
 * @param picture - RGB raster in linear light.
 * @returns Share of the picture, and the patches.
 */
export function clippedPatches(picture: Raster): ClippedPatches {
  const clipped = clippedPixels(picture);
  const values = Float32Array.from(clipped.data);
  const patches = brightPatches(values, picture.width, () => 0.5);
  const count = clipped.data.reduce((sum, at) => sum + at, 0);
  return {
    share: count / clipped.data.length,
    patches: patches.sort((a, b) => b.pixels.length - a.pixels.length),
  };
}
