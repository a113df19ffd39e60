import { maskWhere } from '../image/maskWhere';
import type { Mask, Raster } from '../image/raster';
import { blurWide } from './blurWide';
import type { TrayDifference } from './trayDifference';

/** Fine detail counts from this many times its usual size on the tray. */
const TIMES_GRAIN = 5;
/** Least detail that counts, ln units. */
const LEAST_DETAIL = 0.02;
/** Detail is counted over a neighborhood of this radius, share of the picture's width. */
const REACH = 0.008;
const LEAST_REACH_PX = 7;
/** Share of the neighborhood that must hold detail: an outline alone, or a shadow's edge, holds less. */
const LEAST_DENSITY = 0.45;
/** An outline makes detail on both its sides: this many radii from the edge of stone and shadow none is looked for. */
const RIM = 1.3;
/** The tray's own detail is read at this quantile of the picture; the usual size is 1.5 times it (half-normal). */
const GRAIN_QUANTILE = 0.35;
/** Every so many pixels are plenty for a quantile. */
const SAMPLE_STEP = 7;

/**
 * Finds patterned surface: bands, specks and grains, which neither the tray nor a shadow shows.
 *
 * Detail is what a wider blur takes away. In the dark the same camera noise is more in logarithms, so more is asked.
 *
 * @param fine - Departures from the tray, slightly blurred.
 * @param smooth - The same, blurred more.
 * @param depth - Distance of each pixel to the edge of its area of stone and shadow, pixels; 0 outside.
 * @returns Pixels amid dense detail.
 */
export function textureSeeds(fine: TrayDifference, smooth: TrayDifference, depth: Raster): Mask {
  const { width, height, lightness } = fine;
  const detail = lightness.map((value, i) => Math.abs(value - smooth.lightness[i]!));
  const sorted = detail.filter((_, i) => i % SAMPLE_STEP === 0).sort();
  const usual = 1.5 * sorted[Math.floor(GRAIN_QUANTILE * sorted.length)]!;
  const least = Math.max(LEAST_DETAIL, TIMES_GRAIN * usual);
  const hits = detail.map((value, i) => (value > least * Math.exp(Math.max(0, -lightness[i]!)) ? 1 : 0));
  const reach = Math.max(LEAST_REACH_PX, REACH * width);
  const density = blurWide(hits, width, height, reach);
  return maskWhere(width, height, (i) => density[i]! > LEAST_DENSITY && depth.data[i]! > RIM * reach);
}
