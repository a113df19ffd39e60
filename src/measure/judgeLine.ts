import type { LineSigns } from './lineSigns';

/**
 * Log odds of a fracture; fitted (logistic regression) to the 36 true fractures and the bands and veins of the
 * sample scenes coarse, mid, polished and close-up and one development scene. Scene left out by scene it
 * named nine of ten fractures.
 */
const ODDS = {
  start: -14.2,
  /** Per ln of depth: a fracture is a slot that hardly any light leaves. */
  depth: 2.85,
  /**
   * Per ln unit of depth that a line falls short of an open slot's: it is rather a groove of grinding, half open to
   * the light (sound and cracked ground tiles, photographed, lie on either side).
   */
  shallow: -15,
  slotDepth: 0.5,
  /** Per ln of length in mm, up to the most. */
  length: 4,
  mostLengthMm: 9,
  /** Per ln of the hue's distance from shade (plus 0.006): a vein has a hue of its own. */
  hueOff: -1.5,
  /** Per unit of chromaticity between the two sides, up to the most: a band's edge parts two colors. */
  sidesHue: -15,
  mostSidesHue: 0.15,
  /** Per share of the line that keeps its depth. */
  constancy: 3.6,
  /** Per ln of the length of other lines as deep, mm per cm² (plus 1): bands and veins come in crowds. */
  crowd: -2,
  /** Per share of the length that the ends lie apart: the outline of a grain closes. */
  stretch: 2.4,
};

/**
 * How likely a dark line is a fracture rather than a band, vein or the outline of a grain.
 *
 * @param signs - What was measured on the line.
 * @param crowdMmPerCm2 - Length of the stone's other lines that are nearly as deep, mm per cm².
 * @returns 0 to 1.
 */
export function judgeLine(signs: LineSigns, crowdMmPerCm2: number): number {
  if (signs.depth <= 0) return 0;
  const odds =
    ODDS.start +
    ODDS.depth * Math.log(Math.max(0.1, signs.depth)) +
    ODDS.shallow * Math.max(0, ODDS.slotDepth - signs.depth) +
    ODDS.length * Math.log(Math.min(ODDS.mostLengthMm, signs.lengthMm)) +
    ODDS.hueOff * Math.log(signs.hueOff + 0.006) +
    ODDS.sidesHue * Math.min(ODDS.mostSidesHue, signs.sidesHue) +
    ODDS.constancy * signs.constancy +
    ODDS.crowd * Math.log1p(crowdMmPerCm2) +
    ODDS.stretch * signs.stretch;
  return 1 / (1 + Math.exp(-odds));
}
