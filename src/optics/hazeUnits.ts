import { apertureFlux } from './apertureFlux';
import {
  type Aperture,
  GLOSS_STANDARD_INDEX,
  type MeterGeometry,
  RECEPTOR_APERTURES,
  SOURCE_APERTURE,
} from './glossGeometry';

/** Specular angles at which reflection haze is measured, degrees. */
export type HazeAngleDeg = 20 | 30;

interface HazeMeter {
  readonly source: Aperture;
  readonly receptor: Aperture;
  /** Distance from the mirrored ray to the middle of each haze window, degrees. */
  readonly offsetDeg: number;
  /** The windows' readings are added up, or averaged. */
  readonly share: 1 | 0.5;
}

/**
 * 20°: windows of the gloss receptor's own size at 18.1° and 21.9°, readings added (ASTM E430, test method B).
 * 30°: windows at 28° and 32°, readings averaged (test method A); their size, 0.4° × 3°, is from memory.
 */
const METERS: Readonly<Record<HazeAngleDeg, HazeMeter>> = {
  20: { source: SOURCE_APERTURE, receptor: RECEPTOR_APERTURES[20], offsetDeg: 1.9, share: 1 },
  30: {
    source: { inPlaneDeg: 0.4, acrossDeg: 3 },
    receptor: { inPlaneDeg: 0.4, acrossDeg: 3 },
    offsetDeg: 2,
    share: 0.5,
  },
};

const windows = {
  20: nestedWindows(20),
  30: nestedWindows(30),
};

/**
 * Reflection haze: light thrown about 2° to the sides of the mirrored ray, held against a polished standard.
 *
 * H = 100 · R(±2°) / R_standard(specular), with R the flux from the same source into windows of the same size. A
 * pair of windows either side of the mirrored ray is what a wide window receives beyond a narrow one.
 *
 * A perfect polish has none; it rises as the surface roughens, and falls again when the light is spread so wide
 * that little of it is left near the mirrored ray. So it tells near-mirrors apart, and means nothing below semi-gloss.
 *
 * @param alpha - GGX roughness, 0 to 1.
 * @param n - Refractive index, 1 or more.
 * @param angleDeg - Specular angle.
 * @returns Haze units, 0 or more, on the scale on which the standard of n = 1.567 reads 100 gloss units. Light that
 *   the body scatters is not in it; an instrument on a white stone would read it too.
 * @throws RangeError if alpha is outside 0 to 1 or n below 1.
 * @see ASTM E430, definition of reflection haze.
 */
export function hazeUnits(alpha: number, n: number, angleDeg: HazeAngleDeg): number {
  const { wide, narrow, specular } = windows[angleDeg];
  const beside = apertureFlux(wide, alpha, n) - apertureFlux(narrow, alpha, n);
  const standard = apertureFlux(specular, 0, GLOSS_STANDARD_INDEX);
  return Math.max(0, (100 * METERS[angleDeg].share * beside) / standard);
}

function nestedWindows(angleDeg: HazeAngleDeg) {
  const { source, receptor, offsetDeg } = METERS[angleDeg];
  const within = (halfDeg: number): MeterGeometry => {
    return { angleDeg, source, receptor: { ...receptor, inPlaneDeg: 2 * halfDeg } };
  };
  return {
    wide: within(offsetDeg + receptor.inPlaneDeg / 2),
    narrow: within(offsetDeg - receptor.inPlaneDeg / 2),
    specular: { angleDeg, source, receptor },
  };
}
