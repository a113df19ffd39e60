import type { Mask, Raster } from '../image/raster';
import type { Shadow } from './ballShadow';
import type { LampLines } from './lampLines';
import type { TrayDifference } from './trayDifference';

/** Full shadow is within this of the ball's, ln units; nearer to the stone it is a little darker. */
const DEPTH_TOLERANCE = { most: 0.35, share: 0.35 };
/** Colored light and color noise allowed in shadow, ln units. */
const CHROMA_LIMIT = 0.3;
/** Largest edge strength inside a shadow, ln units per pixel. */
const SMOOTH = 0.05;
/** How far a shadow reaches past a stone at most, share of the picture's width. */
const REACH = 0.12;

/**
 * Finds pixels that are surely tray in full shadow.
 *
 * They are as dark as the ball's shadow, even, nearly of the tray's color, and lie behind a stone: going away
 * from the lamp one comes to lit tray and to no further stone.
 *
 * @param difference - Departures from the tray.
 * @param edges - Edge strength, ln units per pixel.
 * @param shadow - Full shadow on this tray.
 * @param seeds - Pixels that are surely stone, and surely lit tray.
 * @param lampSide - Unit vector in the picture toward the lamp: x right, y up.
 * @param lines - Lines along the light through the areas of stone and shadow.
 * @param shadowShare - Most that a shadow takes of its line; what throws it takes the rest.
 * @returns A mask, to be opened by the caller.
 */
export function shadowSeeds(
  difference: TrayDifference,
  edges: Raster,
  shadow: Shadow,
  seeds: { readonly stone: Mask; readonly tray: Mask },
  lampSide: readonly [x: number, y: number],
  lines: LampLines,
  shadowShare: number,
): Mask {
  const { width, height, lightness, redGreen, blueGreen } = difference;
  const data = new Uint8Array(width * height);
  const tolerance = Math.min(DEPTH_TOLERANCE.most, -DEPTH_TOLERANCE.share * shadow.depth);
  for (let i = 0; i < data.length; i++) {
    const far = lines.awayFromLamp[i]!;
    if (far > shadowShare * (far + lines.towardLamp[i]!)) continue;
    if (seeds.stone.data[i] || Math.abs(lightness[i]! - shadow.depth) > tolerance) continue;
    if (edges.data[i]! > SMOOTH) continue;
    if (Math.hypot(redGreen[i]! - shadow.redGreen, blueGreen[i]! - shadow.blueGreen) > CHROMA_LIMIT) continue;
    data[i] = leadsToTray(i, width, height, seeds, lampSide) ? 1 : 0;
  }
  return { width, height, data };
}

function leadsToTray(
  pixel: number,
  width: number,
  height: number,
  seeds: { readonly stone: Mask; readonly tray: Mask },
  [x, y]: readonly [number, number],
): boolean {
  const row = Math.floor(pixel / width);
  const column = pixel % width;
  for (let step = 1; step < REACH * width; step++) {
    const r = Math.round(row + step * y);
    const c = Math.round(column - step * x);
    if (r < 0 || c < 0 || r >= height || c >= width) return false;
    if (seeds.stone.data[r * width + c]) return false;
    if (seeds.tray.data[r * width + c]) return true;
  }
  return false;
}
