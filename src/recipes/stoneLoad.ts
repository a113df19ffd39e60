/** Size of a stone as photos from above show it, largest over its sides. */
export interface SeenSize {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly areaMm2: number;
}

/** Stones together, by weight. */
export interface StoneLoad {
  readonly count: number;
  readonly kg: number;
  /** Ends of an interval that should hold the truth in nine cases of ten, if our two spreads are right. */
  readonly kgLow: number;
  readonly kgHigh: number;
}

/** Quartz, g/cm³. Source: mineralogical handbook tables, from memory; chalcedony lies some hundredths below. */
export const STONE_G_PER_CM3 = 2.65;

/**
 * Thickness of a stone over its width. Our estimate: a stone lies on its flat side, so it is below 1, and Zingg (1935,
 * from memory) parts flat pebbles from round ones at 2/3.
 */
export const THICKNESS_OF_WIDTH = 0.7;

/** Spread of a stone's thickness and shape about that, and of what all stones of a batch share. Our estimates. */
const SD_OF_ONE = 0.25;
const SD_OF_ALL = 0.15;
/** Standard deviations either way of a normal spread that hold nine cases of ten. */
const NINE_IN_TEN = 1.645;

/**
 * Volume of a stone that a photo shows from above, taken for an ellipsoid over its outline: 2/3 of outline times
 * thickness, since the outline is π a b and the volume 4/3 π a b c.
 *
 * @param thicknessOfWidth - Above 0.
 * @returns cm³; 0 for a stone without size.
 */
export function stoneVolumeCm3(
  { lengthMm, widthMm, areaMm2 }: SeenSize,
  thicknessOfWidth = THICKNESS_OF_WIDTH,
): number {
  // No outline is larger than that of the box around it.
  const outlineMm2 = Math.min(areaMm2, lengthMm * widthMm);
  const volume = ((2 / 3) * outlineMm2 * widthMm * thicknessOfWidth) / 1000;
  return volume > 0 && Number.isFinite(volume) ? volume : 0;
}

/** What stones weigh together; good to a half for one stone, to a quarter for many. */
export function stoneLoad(stones: readonly SeenSize[]): StoneLoad {
  const masses = stones.map((stone) => (stoneVolumeCm3(stone) * STONE_G_PER_CM3) / 1000);
  const kg = masses.reduce((sum, mass) => sum + mass, 0);
  const own = Math.hypot(...masses) * SD_OF_ONE;
  const spread = NINE_IN_TEN * Math.hypot(own, kg * SD_OF_ALL);
  return { count: stones.length, kg, kgLow: Math.max(0, kg - spread), kgHigh: kg + spread };
}
