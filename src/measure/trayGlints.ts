import { luminance } from '../image/luminance';
import type { Mask, Raster } from '../image/raster';
import { blurWide } from './blurWide';
import { type BrightPatch, brightPatches } from './brightPatches';

/** Light that a drop of water in the tray would send. */
export interface TrayLight {
  /** Radiance of the lamp's image in water. */
  readonly water: number;
  /** Radiance of a white sheet that lies in the lamp's light. */
  readonly sheet: number;
  readonly mmPerPx: number;
}

/** A drop's glint stands out by this share of a water surface's highlight, and is no higher than that. */
const HEIGHT = { least: 0.5, most: 1.6 };
/** Little that only scatters light is brighter: times a white sheet in the lamp's light. */
const TIMES_SHEET = 0.9;
/** Width of the mean over the tray that glints are held against, mm. */
const AROUND_MM = 2;
const WIDEST_MM = 2.5;
const FEWEST_PIXELS = 2;

/**
 * Finds the lamp's image in drops of water on the tray: small spots as bright as a white sheet.
 *
 * @param picture - RGB raster of the whole photo in linear light.
 * @param tray - The bare tray in it: neither stone nor ball.
 * @param light - What the lamp makes of water and of a white sheet.
 * @returns The glints, brightest first; empty on a dry, matte tray.
 */
export function trayGlints(picture: Raster, tray: Mask, light: TrayLight): BrightPatch[] {
  const { width, height, data } = luminance(picture);
  const inside = data.map((value, i) => value * tray.data[i]!);
  const sums = blurWide(inside, width, height, AROUND_MM / light.mmPerPx);
  const shares = blurWide(tray.data, width, height, AROUND_MM / light.mmPerPx);
  const excess = Float32Array.from(data, (value, i) =>
    tray.data[i] && value > TIMES_SHEET * light.sheet
      ? value - sums[i]! / Math.max(1e-6, shares[i]!)
      : Number.NaN,
  );
  return brightPatches(excess, width, () => HEIGHT.least * light.water).filter(({ pixels, peak }) => {
    const radiusMm = Math.sqrt(pixels.length / Math.PI) * light.mmPerPx;
    return pixels.length >= FEWEST_PIXELS && radiusMm < WIDEST_MM && peak < HEIGHT.most * light.water;
  });
}
