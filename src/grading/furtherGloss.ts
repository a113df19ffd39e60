import { type Gloss, glossOf } from './gloss';
import type { MaterialName } from './materials';
import type { MeasuredFurther } from './measuredStone';

/** Gloss at a further place of a stone. */
export interface FurtherGloss extends Pick<Gloss, 'gu60' | 'gu60Low' | 'gu60High'> {
  /** Place in the photo, pixels. */
  readonly row: number;
  readonly column: number;
  /** True when it differs from the stone's own gloss by more than both intervals, and by twice the roughness. */
  readonly differs: boolean;
}

/** Roughnesses less apart than this factor are one finish: neighboring facets read so far apart by themselves. */
const LEAST_FACTOR = 2;

/**
 * Gloss of each further image of the lamp on a stone, and whether the stone is unevenly polished.
 *
 * The index is the same at both places, so the intervals compared are those at the material's likeliest index.
 *
 * @param gloss - The stone's own.
 * @param further - Empty when the lamp is seen once.
 * @param material - As said of the stone; null when nothing was said.
 */
export function furtherGloss(
  gloss: Gloss,
  further: readonly MeasuredFurther[],
  material: MaterialName | null,
): FurtherGloss[] {
  return further.map(({ row, column, byIndex }) => {
    const { alpha, alphaLow, alphaHigh, gu60, gu60Low, gu60High } = glossOf(byIndex, material);
    const isOutside = alphaLow > gloss.alphaHigh || alphaHigh < gloss.alphaLow;
    const factor = Math.max(alpha / gloss.alpha, gloss.alpha / alpha);
    return { row, column, gu60, gu60Low, gu60High, differs: isOutside && factor >= LEAST_FACTOR };
  });
}
