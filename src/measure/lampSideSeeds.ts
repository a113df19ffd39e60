import type { Mask, Raster } from '../image/raster';
import type { Shadow } from './ballShadow';
import type { LampLines } from './lampLines';
import { localThickness } from './localThickness';
import type { TrayDifference } from './trayDifference';

/** Share of a line, from its end toward the lamp on, that is sure to lie on the stone. */
const STONE_PART = { from: 0.15, usualTo: 0.42, mostTo: 0.62 };
/** What is left to the shadow is this many times the ball's share. */
const SHADOW_MARGIN = 1.1;
/** Share of a line, from its far end on, that lies in the stone's shadow if it is dark there. */
const SHADOW_PART = { from: 0.04, to: 0.16 };
/** Lines that only graze a stone run near the area's edge: least depth, in shares of the way toward the lamp. */
const NOT_GRAZING = { usual: 0.75, withBall: 0.6 };
/** Gaps between shadows are narrow beside the stones: least depth, in shares of the largest disc there. */
const NOT_GAP = 0.62;
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
 * @param shadowShare - Most that a shadow takes of its line.
 * @returns Two masks without common pixels.
 */
export function lampSideSeeds(
  lines: LampLines,
  depth: Raster,
  difference: TrayDifference,
  edges: Raster,
  shadow: Shadow,
  shadowShare: number,
): { readonly stone: Mask; readonly shade: Mask } {
  const { width, height } = depth;
  const { towardLamp, awayFromLamp } = lines;
  const thickness = localThickness(depth);
  const stoneTo = shadow.isRead
    ? Math.max(STONE_PART.usualTo, Math.min(STONE_PART.mostTo, 1 - SHADOW_MARGIN * shadowShare))
    : STONE_PART.usualTo;
  const notGrazing = shadow.isRead ? NOT_GRAZING.withBall : NOT_GRAZING.usual;
  const stone = new Uint8Array(depth.data.length);
  const shade = new Uint8Array(depth.data.length);
  for (let i = 0; i < stone.length; i++) {
    if (depth.data[i] === 0) continue;
    const whole = towardLamp[i]! + awayFromLamp[i]!;
    const share = towardLamp[i]! / whole;
    const onStone = share > STONE_PART.from && share < stoneTo;
    if (
      onStone &&
      !(shadow.isRead && isShaded(difference, edges, shadow, i)) &&
      depth.data[i]! > notGrazing * towardLamp[i]!
    ) {
      const thick = thickness(Math.floor(i / width), i % width);
      if (depth.data[i]! > NOT_GAP * thick) stone[i] = 1;
    }
    if (1 - share > SHADOW_PART.from && 1 - share < SHADOW_PART.to && isShaded(difference, edges, shadow, i))
      shade[i] = 1;
  }
  return { stone: { width, height, data: stone }, shade: { width, height, data: shade } };
}

/** Whether a pixel may be tray in full shadow: as dark, even, and of the shadow's color. */
export function isShaded(difference: TrayDifference, edges: Raster, shadow: Shadow, i: number): boolean {
  const dark = difference.lightness[i]! < DARK_SHARE * shadow.depth;
  const red = difference.redGreen[i]! - shadow.redGreen;
  const blue = difference.blueGreen[i]! - shadow.blueGreen;
  return dark && edges.data[i]! < SMOOTH && red * red + blue * blue < SHADOW_CHROMA ** 2;
}
