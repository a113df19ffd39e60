import type { Mask, Raster } from '../image/raster';
import type { Shadow } from './ballShadow';
import type { LampLines } from './lampLines';
import type { TrayDifference } from './trayDifference';

/** Share of a line, from its end toward the lamp on, that is sure to lie on the stone. */
const STONE_PART = { from: 0.15, to: 0.42 };
/** Share of a line, from its far end on, that lies in the stone's shadow if it is dark there. */
const SHADOW_PART = { from: 0.04, to: 0.16 };
/** Lines that only graze a stone run near the area's edge: least depth, in shares of the way toward the lamp. */
const NOT_GRAZING = 0.75;
/** A pixel is dark from this share of full shadow's ln on. */
const DARK_SHARE = 0.6;
/** Largest edge strength inside a shadow, ln units per pixel, and color that it may have. */
const SMOOTH = 0.05;
const SHADOW_CHROMA = 0.2;

/**
 * Finds sure stone and sure shadow by their order along the light.
 *
 * Every line toward the lamp that meets a shadow meets, nearer to the lamp, the stone that throws it. So the part
 * of an area of stone and shadow that faces the lamp is stone, whatever its color, and its dark far end is shadow.
 *
 * @param lines - Lines along the light through the areas of stone and shadow.
 * @param depth - Distance of each pixel to its area's edge, pixels.
 * @param difference - Departures from the tray.
 * @param edges - Edge strength, ln units per pixel.
 * @param shadow - Full shadow on this tray.
 * @returns Two masks without common pixels.
 */
export function lampSideSeeds(
  lines: LampLines,
  depth: Raster,
  difference: TrayDifference,
  edges: Raster,
  shadow: Shadow,
): { readonly stone: Mask; readonly shade: Mask } {
  const { width, height } = depth;
  const { towardLamp, awayFromLamp } = lines;
  const stone = new Uint8Array(depth.data.length);
  const shade = new Uint8Array(depth.data.length);
  for (let i = 0; i < stone.length; i++) {
    if (depth.data[i] === 0) continue;
    const whole = towardLamp[i]! + awayFromLamp[i]!;
    const share = towardLamp[i]! / whole;
    const looksShaded = isShaded(difference, edges, shadow, i);
    const onStone = share > STONE_PART.from && share < STONE_PART.to;
    if (onStone && !looksShaded && depth.data[i]! > NOT_GRAZING * towardLamp[i]!) stone[i] = 1;
    if (1 - share > SHADOW_PART.from && 1 - share < SHADOW_PART.to && looksShaded) shade[i] = 1;
  }
  return { stone: { width, height, data: stone }, shade: { width, height, data: shade } };
}

function isShaded(difference: TrayDifference, edges: Raster, shadow: Shadow, i: number): boolean {
  const dark = difference.lightness[i]! < DARK_SHARE * shadow.depth;
  const red = difference.redGreen[i]! - shadow.redGreen;
  const blue = difference.blueGreen[i]! - shadow.blueGreen;
  return dark && edges.data[i]! < SMOOTH && Math.hypot(red, blue) < SHADOW_CHROMA;
}
