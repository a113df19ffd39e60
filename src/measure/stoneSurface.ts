import { luminance } from '../image/luminance';
import type { Mask, Raster } from '../image/raster';
import { clippedPixels } from './clippedPixels';
import { colorlessLight } from './colorlessLight';
import { maskedBlur } from './maskedBlur';
import { medianOver } from './medianOver';
import { shrinkMask } from './shrinkMask';

/** Blurs one channel by a Gaussian of that standard deviation in pixels. */
export type Blur = (raster: Raster, sigmaPx: number) => Raster;

/** A stone's picture, made ready for finding flaws. */
export interface StoneSurface {
  /** RGB in linear light. */
  readonly color: Raster;
  /** Natural logarithm of luminance, smoothly filled beyond the stone; a factor of shade becomes a difference. */
  readonly logLight: Raster;
  /** The same without what each place's color explains and without slow shading. */
  readonly colorless: Raster;
  /** The stone less its clipped highlights. */
  readonly seen: Mask;
  /** Where flaws are looked for: away from the outline and from clipped highlights. */
  readonly inner: Mask;
  readonly mmPerPx: number;
  /** Unit vector in the picture toward the lamp: x right, y up. */
  readonly lampSide: readonly [number, number];
}

/** Flaws are looked for at least this far inside the outline, mm: nearer it the surface is seen too slantwise. */
const RIM_MM = 0.45;
/** Standard deviation of the mean that fills the picture beyond the stone, mm. */
const FILL_MM = 0.8;
/** Added before the logarithm, share of the stone's median light: keeps the camera's noise in the dark from swelling. */
const FLOOR_SHARE = 0.05;
/** The same for a black stone, share of full scale: about a sixth of the first step of an 8-bit sRGB photo. */
const LEAST_FLOOR = 0.0005;

/**
 * Makes a stone's picture ready for finding flaws.
 *
 * @param color - RGB in linear light, the lamp's color divided out.
 * @param mask - The stone.
 * @param mmPerPx - Scale.
 * @param lampSide - Unit vector in the picture toward the lamp: x right, y up.
 * @param blur - Gaussian blur.
 */
export function stoneSurface(
  color: Raster,
  mask: Mask,
  mmPerPx: number,
  lampSide: readonly [number, number],
  blur: Blur,
): StoneSurface {
  // Also where a darker shot shows more: the lamp's image is no surface to look for flaws on.
  const clipped = clippedPixels({ ...color, clipLevel: 1 }).data;
  const seen = { ...mask, data: mask.data.map((inside, i) => (inside && !clipped[i] ? 1 : 0)) };
  const raw = logOfLight(color, seen);
  const fill = maskedBlur(raw, seen, FILL_MM / mmPerPx, blur);
  const data = raw.data.map((value, i) => (seen.data[i] ? value : fill.data[i]!));
  const logLight: Raster = { ...raw, data };
  return {
    color,
    logLight,
    colorless: colorlessLight(logLight, color, seen, mmPerPx, blur),
    seen,
    inner: shrinkMask(seen, Math.max(1, Math.round(RIM_MM / mmPerPx))),
    mmPerPx,
    lampSide,
  };
}

function logOfLight(color: Raster, mask: Mask): Raster {
  const light = luminance(color);
  const floor = LEAST_FLOOR + FLOOR_SHARE * Math.max(0, medianOver(light.data, mask));
  return { ...light, data: light.data.map((value) => Math.log(Math.max(0, value) + floor)) };
}
