import type { Mask, Raster } from '../image/raster';
import type { Shadow } from './ballShadow';
import { blurWide } from './blurWide';
import { grainEdge } from './edgeRelief';
import type { TrayDifference } from './trayDifference';

/** Pixels that are surely stone and pixels that are surely tray, shadows counted as neither. */
export interface StoneSeeds {
  readonly stone: Mask;
  readonly tray: Mask;
}

/** Thresholds in standard deviations of the bare tray, with least values in ln units. */
const COLORED_STONE = { sds: 6, chroma: 0.1 };
const GRAY_STONE = { sds: 8, chroma: 0.02 };
const BRIGHT_STONE = { sds: 5, lightness: 0.12 };
const SURE_TRAY = { sds: 2.5, chroma: 0.04, lightness: 0.05 };
/** Color noise of compressed photos in the dark: this many 8-bit levels, as ln units of the darkest tray pixel. */
const DARK_COLOR_LEVELS = 2.5;
/** Colored light that a stone throws into its own shadow: color allowed there per ln unit of darkness. */
const COLOR_IN_SHADOW = 0.35;
/** Colored light around a stone: share of its color, and how far it reaches, share of the picture's width. */
const THROWN_COLOR = { share: 0.8, reach: 0.04 };
/** Pixels on an edge this many times the tray's usual edge strength are not surely tray. */
const EDGE_TIMES_USUAL = 4.5;

/**
 * Sorts pixels into surely stone, surely tray, and neither.
 *
 * A shadow has nearly the tray's color and is darker, down to the ambient light's share; a stone gives itself
 * away by color, by being brighter than the tray, or by being darker than any shadow. Strong colors are
 * looked for first, since they color the tray around them; then weak ones, where no strong color is near.
 *
 * @param difference - Departures from the tray.
 * @param edges - Edge strength in ln units per pixel.
 * @param shadow - Full shadow on this tray.
 * @returns Two masks without common pixels.
 */
export function stoneSeeds(difference: TrayDifference, edges: Raster, shadow: Shadow): StoneSeeds {
  const { width, height, lightness, lightnessSd, chromaSd } = difference;
  const chroma = chromaBesideShadow(difference, shadow);
  const colored = Math.max(COLORED_STONE.chroma, COLORED_STONE.sds * chromaSd);
  const strong = chroma.map((c, i) => (c > colored + COLOR_IN_SHADOW * Math.max(0, -lightness[i]!) ? c : 0));
  const capped = strong.map((c) => Math.min(c, 1));
  const thrown = blurWide(capped, width, height, THROWN_COLOR.reach * width);
  const gray = Math.max(GRAY_STONE.chroma, GRAY_STONE.sds * chromaSd);
  const bright = Math.max(BRIGHT_STONE.lightness, BRIGHT_STONE.sds * lightnessSd);
  const stone = new Uint8Array(width * height);
  for (let i = 0; i < stone.length; i++) {
    const light = lightness[i]! > bright || lightness[i]! < shadow.darkest;
    if (strong[i]! > 0 || light) stone[i] = 1;
    else if (chroma[i]! > gray) {
      const weak = gray + darkColorNoise(difference, i) + THROWN_COLOR.share * thrown[i]!;
      if (chroma[i]! > weak) stone[i] = 1;
    }
  }
  const tray = sureTray(difference, chroma, edges, stone);
  return { stone: { width, height, data: stone }, tray: { width, height, data: tray } };
}

/** Color error of an 8-bit compressed photo at a pixel darker than the tray, ln units; none on the bare tray. */
function darkColorNoise(difference: TrayDifference, i: number): number {
  const darker = Math.min(1, Math.max(0, -difference.lightness[i]! / 0.3));
  // An sRGB code is about the linear value to the power 1/2.2, so ln changes 2.2 times as fast as ln code.
  const code = 255 * difference.light[i]! ** (1 / 2.2);
  return (darker * 2.2 * DARK_COLOR_LEVELS) / Math.max(4, code);
}

/** Distance of the color from the tray's, as far as the shadow's tint at that darkness does not explain it. */
function chromaBesideShadow(difference: TrayDifference, shadow: Shadow): Float32Array {
  return difference.lightness.map((l, i) => {
    const share = Math.min(1, Math.max(0, l / shadow.depth));
    const red = difference.redGreen[i]! - share * shadow.redGreen;
    const blue = difference.blueGreen[i]! - share * shadow.blueGreen;
    return Math.sqrt(red * red + blue * blue);
  });
}

function sureTray(
  difference: TrayDifference,
  chroma: Float32Array,
  edges: Raster,
  stone: Uint8Array,
): Uint8Array {
  const { lightness, lightnessSd, chromaSd } = difference;
  const edgeLimit = EDGE_TIMES_USUAL * grainEdge(edges);
  const chromaLimit = Math.max(SURE_TRAY.chroma, SURE_TRAY.sds * chromaSd);
  const lightLimit = Math.max(SURE_TRAY.lightness, SURE_TRAY.sds * lightnessSd);
  return stone.map((isStone, i) => {
    const flat = chroma[i]! < chromaLimit && Math.abs(lightness[i]!) < lightLimit;
    return !isStone && flat && edges.data[i]! < edgeLimit ? 1 : 0;
  });
}
