import type { Mask } from '../image/raster';
import type { TrayDifference } from './trayModel';

/** Pixels that are surely stone and pixels that are surely tray, shadows counted as neither. */
export interface StoneSeeds {
  readonly stone: Mask;
  readonly tray: Mask;
}

/** Thresholds in standard deviations of the bare tray, with least values in ln units. */
const SURE_STONE = { sds: 5, chroma: 0.1, brighter: 0.12 };
const SURE_TRAY = { sds: 2.5, chroma: 0.04, lightness: 0.05 };
/** A stone is taken to be darker than any shadow from this far below the deepest shadow, ln units. */
const BELOW_SHADOW = 0.25;

/**
 * Sorts pixels into surely stone, surely tray, and neither.
 *
 * A shadow has the tray's color and is darker, down to the ambient light's share; a stone gives itself away
 * by color, by being brighter than the tray, or by being darker than any shadow.
 *
 * @param difference - Departures from the tray.
 * @param deepestShadow - ln of the share of the tray's light left in full shadow, below 0.
 * @returns Two masks without common pixels.
 */
export function stoneSeeds(difference: TrayDifference, deepestShadow: number): StoneSeeds {
  const { width, height, lightness, chroma, lightnessSd, chromaSd } = difference;
  const stone = new Uint8Array(width * height);
  const tray = new Uint8Array(width * height);
  const chromaLimit = Math.max(SURE_STONE.chroma, SURE_STONE.sds * chromaSd);
  const brightLimit = Math.max(SURE_STONE.brighter, SURE_STONE.sds * lightnessSd);
  const trayChroma = Math.max(SURE_TRAY.chroma, SURE_TRAY.sds * chromaSd);
  const trayLightness = Math.max(SURE_TRAY.lightness, SURE_TRAY.sds * lightnessSd);
  for (let i = 0; i < stone.length; i++) {
    const l = lightness[i]!;
    const c = chroma[i]!;
    if (c > chromaLimit || l > brightLimit || l < deepestShadow - BELOW_SHADOW) stone[i] = 1;
    else if (c < trayChroma && Math.abs(l) < trayLightness) tray[i] = 1;
  }
  return { stone: { width, height, data: stone }, tray: { width, height, data: tray } };
}
