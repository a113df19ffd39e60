import type { DarkPatch } from './pitSigns';

/** What a dark patch is taken for. */
export interface PatchJudgment {
  readonly kind: 'pit' | 'fracture' | 'chip';
  /** 0 to 1. */
  readonly confidence: number;
  readonly diameterMm: number;
  readonly lengthMm: number;
}

/** A patch this many times as long as wide, and at least this long, is a line. */
const LINE = { ratio: 3.2, leastMm: 2.2 };
/** From this diameter on a hole is a chip; near the rim already from the smaller one. */
const CHIP_MM = { anywhere: 3.2, atRim: 1.6, rim: 1.2 };
/** Weights of the signs in the log odds of a flaw; set on the development scenes. */
const ODDS = { start: -2.6, depth: 2.2, farLip: 3.2, nearLip: -1.6, usual: 0.8 };
/** Signs beyond this many times their unit add nothing more. */
const MOST = 3;
/** Units of the signs, ln units of light. */
const UNIT = { depth: 0.35, lip: 0.15 };

/**
 * Judges whether a dark patch is a flaw of the surface or a mark of color, and of which kind.
 *
 * @param patch - Shape and contrasts.
 * @param usual - Usual size of the stone's own detail, ln units; a busy pattern needs stronger signs.
 * @param mmPerPx - Scale of the patch's pixels.
 * @param rimMm - Distance of the patch's center from the stone's outline, mm.
 * @returns Kind, size and confidence.
 */
export function judgePatch(patch: DarkPatch, usual: number, mmPerPx: number, rimMm: number): PatchJudgment {
  const areaMm2 = patch.pixels.length * mmPerPx * mmPerPx;
  const diameterMm = 2 * Math.sqrt(areaMm2 / Math.PI);
  // A uniform line of length l has a standard deviation of l / √12.
  const lengthMm = Math.sqrt(12) * patch.alongPx * mmPerPx;
  const isLine = patch.alongPx > LINE.ratio * patch.acrossPx && lengthMm >= LINE.leastMm;
  const unit = (value: number, one: number) =>
    Math.min(MOST, Math.max(-MOST, value / (one + ODDS.usual * usual)));
  const odds =
    ODDS.start +
    ODDS.depth * unit(-patch.depth, UNIT.depth) +
    ODDS.farLip * unit(patch.farLip, UNIT.lip) +
    ODDS.nearLip * unit(Math.max(0, patch.nearLip), UNIT.lip);
  const isChip = diameterMm > CHIP_MM.anywhere || (diameterMm > CHIP_MM.atRim && rimMm < CHIP_MM.rim);
  const kind = isLine ? 'fracture' : isChip ? 'chip' : 'pit';
  return { kind, confidence: 1 / (1 + Math.exp(-odds)), diameterMm, lengthMm };
}
