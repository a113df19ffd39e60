import { apertureFlux } from './apertureFlux';
import type { MeterGeometry } from './glossGeometry';

/** Angle of incidence, degrees. Source: ASTM E430, test methods A and C. */
const ANGLE_DEG = 30;
/** Distance of the second reading from the mirrored ray, degrees. Source: ASTM E430 / ASTM D5767, test method A. */
const OFFSET_DEG = 0.3;
/** Source and receptor, degrees: the standards ask for very narrow ones; these values are from memory. */
const WIDTH_DEG = 0.14;
const ACROSS_DEG = 3;

const SPECULAR = within(WIDTH_DEG / 2);
const UP_TO_FAR_EDGE = within(OFFSET_DEG + WIDTH_DEG / 2);
const UP_TO_NEAR_EDGE = within(OFFSET_DEG - WIDTH_DEG / 2);
/** The refractive index cancels to a few thousandths; quartz is taken. */
const INDEX = 1.54;

/**
 * Distinctness of image: how much less light is thrown 0.3° beside the mirrored ray than along it.
 *
 * DOI = 100 · (1 − R_0.3 / R_s), both read through a slit of 0.14°. R_0.3 is the mean of both sides, taken as what a
 * wide window receives beyond a narrow one.
 *
 * @param alpha - GGX roughness, 0 to 1.
 * @returns Percent: 100 for a perfect polish, falling to 0 when the mirrored edge of a lamp is no longer an edge.
 *   Nearly all of the fall lies below roughness 0.02, so it tells mirrors apart and nothing else. Waviness, which
 *   instruments read as well, is not in it.
 * @throws RangeError if alpha is outside 0 to 1.
 * @see ASTM E430 and ASTM D5767, test method A.
 */
export function distinctnessOfImage(alpha: number): number {
  const beside = apertureFlux(UP_TO_FAR_EDGE, alpha, INDEX) - apertureFlux(UP_TO_NEAR_EDGE, alpha, INDEX);
  const share = beside / 2 / apertureFlux(SPECULAR, alpha, INDEX);
  return Math.min(100, Math.max(0, 100 * (1 - share)));
}

function within(halfDeg: number): MeterGeometry {
  const slit = { inPlaneDeg: WIDTH_DEG, acrossDeg: ACROSS_DEG };
  return { angleDeg: ANGLE_DEG, source: slit, receptor: { ...slit, inPlaneDeg: 2 * halfDeg } };
}
