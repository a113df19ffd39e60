import { fresnelReflectance } from './fresnelReflectance';

/** The two dimensions along which people tell glossy surfaces apart. */
export interface PerceivedGloss {
  /** c: how strongly mirrored lights stand out from the stone's own color, 0 to 1. */
  readonly contrast: number;
  /** d: how sharp mirrored things look, 0 to 1. */
  readonly distinctness: number;
}

/**
 * Contrast gloss and distinctness gloss, two figures scaled to what people see.
 *
 * c = ∛(ρs + ρd / 2) − ∛(ρd / 2) and d = 1 − α, with ρs the share mirrored head-on (Fresnel) and ρd the body's diffuse
 * reflectance. The study varied Ward's roughness from 0.04 to 0.10 and ρs from 0.033 to 0.099 (ranges from memory);
 * Ward's roughness is taken for GGX's, as both are widths of the distribution of slopes.
 *
 * @param alpha - GGX roughness, 0 or more; above 1 it reads as 1.
 * @param n - Refractive index, 1 or more.
 * @param bodyReflectance - ρd, 0 (black) to 1 (white).
 * @returns Both figures; a dark stone has more contrast at the same polish than a white one.
 * @throws RangeError if the body's reflectance is outside 0 to 1, alpha negative or n below 1.
 * @see Pellacini, Ferwerda & Greenberg 2000, Toward a psychophysically-based light reflection model for image synthesis;
 *   Ferwerda, Pellacini & Greenberg 2001, Proc. SPIE 4299. Formula from memory.
 */
export function perceivedGloss(alpha: number, n: number, bodyReflectance: number): PerceivedGloss {
  if (!(alpha >= 0)) throw new RangeError(`The roughness must be 0 or more, not ${alpha}.`);
  if (!(bodyReflectance >= 0 && bodyReflectance <= 1)) {
    throw new RangeError(`The body's reflectance must lie in 0 to 1, not ${bodyReflectance}.`);
  }
  const half = bodyReflectance / 2;
  const mirrored = fresnelReflectance(n, 1);
  return {
    contrast: Math.cbrt(mirrored + half) - Math.cbrt(half),
    distinctness: 1 - Math.min(1, alpha),
  };
}
