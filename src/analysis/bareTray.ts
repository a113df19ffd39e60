import type { Raster } from '../image/raster';
import { gaussianBlur } from '../kernels/gaussianBlur';
import { type TrayDifference, trayDifference } from '../measure/trayDifference';
import { type TrayModel, trayModel } from '../measure/trayModel';

/** A small picture held against its own bare tray. */
export interface BareTray {
  /** The picture, blurred so far that the tray's own grain does not count. */
  readonly blurred: Raster;
  readonly model: TrayModel;
  readonly difference: TrayDifference;
}

/** Pixels of the small picture. */
const SIGMA_PX = 1;
const known = new WeakMap<Raster, BareTray>();

/** The bare tray of a small picture (RGB in linear light), worked out once for all that ask. */
export function bareTray(small: Raster): BareTray {
  const before = known.get(small);
  if (before) return before;
  const blurred = gaussianBlur(small, SIGMA_PX);
  const model = trayModel(blurred);
  const tray = { blurred, model, difference: trayDifference(blurred, model) };
  known.set(small, tray);
  return tray;
}
