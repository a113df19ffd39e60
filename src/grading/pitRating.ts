/** How pitted a surface is, in the classes of ASTM G46; null where there is less than the first class knows. */
export interface PitRating {
  /** pits per area. */
  readonly density: string | null;
  /** B-1 to B-5: mean area of a pit's mouth. */
  readonly size: string | null;
}

/** Pits per m² of the classes. Source: ASTM G46, standard rating chart; values from memory. */
const DENSITIES_PER_M2 = [2.5e3, 1e4, 5e4, 1e5, 5e5];
/** Areas of a pit's mouth of the classes B-1 to B-5, mm². Source: as above. */
const SIZES_MM2 = [0.5, 2, 8, 12.5, 24.5];
/** A figure counts as the first class from this share of it on. Our default. */
const LEAST_SHARE = 0.5;

/**
 * Rates the pits of a surface by ASTM G46: the class whose chart value is nearest, as a ratio.
 *
 * The chart was drawn for corroded metal. Its depth classes start at 0.4 mm and need a cut or a needle, so one photo
 * does not give them.
 *
 * @param count - Pits on the surface.
 * @param surfaceCm2 - Surface inspected, cm², > 0.
 * @param totalMm2 - Area of all pits' mouths together, mm².
 */
export function pitRating(count: number, surfaceCm2: number, totalMm2: number): PitRating {
  if (count === 0) return { density: null, size: null };
  return {
    density: classOf('A', (1e4 * count) / surfaceCm2, DENSITIES_PER_M2),
    size: classOf('B', totalMm2 / count, SIZES_MM2),
  };
}

function classOf(letter: string, value: number, chart: readonly number[]): string | null {
  if (value < LEAST_SHARE * chart[0]!) return null;
  const apart = chart.map((entry) => Math.abs(Math.log(value / entry)));
  return `${letter}-${apart.indexOf(Math.min(...apart)) + 1}`;
}
