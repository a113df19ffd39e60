import type { Gloss } from './gloss';
import { type ShineFigures, shineFigures } from './shineFigures';

/** The figures at a stone's estimated roughness, and at roughnesses all over its interval. */
export interface ShineRange {
  readonly best: ShineFigures;
  /** Figures that the stone may have as well; haze is highest inside an interval, so ends alone do not hold it. */
  readonly others: readonly ShineFigures[];
}

/**
 * Figures of a stone with what else they could be: over the 90 % interval of its roughness and the material's indexes.
 *
 * @param gloss - Estimated gloss.
 * @param bodyReflectance - Share of light that the stone itself sends back, 0 to 1; null when unknown.
 */
export function shineRange(gloss: Gloss, bodyReflectance: number | null): ShineRange {
  const { alpha, alphaLow, alphaHigh, n, atIndexes } = gloss;
  const inside = [Math.sqrt(alphaLow * alpha), Math.sqrt(alpha * alphaHigh)];
  return {
    best: shineFigures(alpha, n, bodyReflectance),
    others: [
      ...inside.map((between) => shineFigures(between, n, bodyReflectance)),
      ...atIndexes.flatMap((there) =>
        [there.alphaLow, there.alphaHigh].map((end) => shineFigures(end, there.n, bodyReflectance)),
      ),
    ],
  };
}
