import { luminance } from '../image/luminance';
import type { Mask, Raster } from '../image/raster';

/** Blurs one channel by a Gaussian of that standard deviation in pixels. */
export type Blur = (raster: Raster, sigmaPx: number) => Raster;

/** What of a stone's picture flaws are looked for in. */
export interface StoneSurface {
  /** RGB in linear light. */
  readonly color: Raster;
  /** Natural logarithm of luminance; a factor of shading becomes a difference. */
  readonly logLight: Raster;
  /** Where flaws are looked for. */
  readonly inner: Mask;
  readonly mmPerPx: number;
  /** Unit vector in the picture toward the lamp: x right, y up. */
  readonly lampSide: readonly [number, number];
}

/** Added before the logarithm, share of the stone's median light: keeps the camera's noise in the dark from swelling. */
const FLOOR_SHARE = 0.05;
/** The same for a black stone, share of full scale: about half a step of an 8-bit photo. */
const LEAST_FLOOR = 0.0005;

/**
 * Logarithm of a stone's light.
 *
 * @param color - RGB in linear light.
 * @param mask - The stone; not empty.
 * @returns One channel, ln units.
 */
export function logLight(color: Raster, mask: Mask): Raster {
  const light = luminance(color);
  const inside = light.data.filter((_, i) => mask.data[i] === 1).sort();
  const floor = LEAST_FLOOR + FLOOR_SHARE * Math.max(0, inside[inside.length >> 1] ?? 0);
  return { ...light, data: light.data.map((value) => Math.log(Math.max(0, value) + floor)) };
}
