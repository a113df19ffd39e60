import { distinctnessOfImage } from '../optics/distinctnessOfImage';
import { glossUnits } from '../optics/glossUnits';
import { hazeUnits } from '../optics/hazeUnits';
import { COMB_WIDTHS_MM, type CombWidthMm, imageClarity } from '../optics/imageClarity';
import { perceivedGloss } from '../optics/perceivedGloss';

/** What instruments would read on a flat of a stone's finish, and how glossy people would call it. */
export interface ShineFigures {
  /** Gloss units. */
  readonly gu20: number;
  readonly gu60: number;
  readonly gu85: number;
  /** Percent, by width of the comb's bars. */
  readonly imageClarity: readonly { readonly combMm: CombWidthMm; readonly percent: number }[];
  /** Percent. */
  readonly distinctnessOfImage: number;
  /** Haze units at 20° and at 30°. */
  readonly haze: number;
  readonly haze30: number;
  /** Contrast gloss, 0 to 1; null when the stone's own lightness was not seen. */
  readonly contrast: number | null;
  /** Distinctness gloss, 0 to 1. */
  readonly distinctness: number;
}

/**
 * All figures of a roughness; some milliseconds.
 *
 * @param alpha - GGX roughness, 0 or more; above 1 it reads as 1.
 * @param n - Refractive index, 1 or more.
 * @param bodyReflectance - Share of light that the stone itself sends back, 0 to 1; null when unknown.
 * @throws RangeError if an argument is out of range.
 * @see `glossUnits`, `imageClarity`, `distinctnessOfImage`, `hazeUnits` and `perceivedGloss` for formulas and limits.
 */
export function shineFigures(alpha: number, n: number, bodyReflectance: number | null): ShineFigures {
  const within = Math.min(1, alpha);
  const { contrast, distinctness } = perceivedGloss(within, n, bodyReflectance ?? 0);
  return {
    gu20: glossUnits(within, n, 20),
    gu60: glossUnits(within, n, 60),
    gu85: glossUnits(within, n, 85),
    imageClarity: COMB_WIDTHS_MM.map((combMm) => ({ combMm, percent: imageClarity(within, combMm) })),
    distinctnessOfImage: distinctnessOfImage(within),
    haze: hazeUnits(within, n, 20),
    haze30: hazeUnits(within, n, 30),
    contrast: bodyReflectance === null ? null : contrast,
    distinctness,
  };
}
