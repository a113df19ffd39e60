import { fresnelReflectance } from './fresnelReflectance';
import curves from './glossCurves.json';
import { GLOSS_STANDARD_INDEX, type GlossAngleDeg } from './glossGeometry';

/** The logarithm of the roughness runs evenly over a curve's knots, from the smoothest to 1. */
const SMOOTHEST = curves.smoothest;
/** Indexes at which curves are integrated. */
const INDEXES = curves.indexes;
const KNOTS = curves.shares[60][0]!.length;
const KNOTS_PER_LOG = (KNOTS - 1) / -Math.log(SMOOTHEST);
const RADIANS = Math.PI / 180;

/**
 * Estimated reading of a gloss meter on a flat surface of a given roughness; `glossIntegral`, interpolated.
 *
 * What a rough surface reads as a share of a perfect polish depends little on the index, so it is interpolated
 * between curves of a few indexes, and the polish itself is exact. The curves are integrated beforehand, by
 * `tests/optics/writeGlossCurves.ts`: the page would be busy with them for a tenth of a second.
 *
 * @param alpha - GGX roughness, 0 (perfect polish) or more; above 1 it reads as 1.
 * @param n - Refractive index, 1 or more.
 * @param angleDeg - Geometry of the gloss meter.
 * @returns Gloss units, 0 or more, within 0.05 of the integral for n from 1.3 to 2; falls as alpha grows.
 * @throws RangeError if alpha is negative or n below 1.
 * @see ISO 2813 / ASTM D523.
 */
export function glossUnits(alpha: number, n: number, angleDeg: GlossAngleDeg): number {
  if (!(alpha >= 0)) throw new RangeError(`The roughness must be 0 or more, not ${alpha}.`);
  const cosTheta = Math.cos(angleDeg * RADIANS);
  const polish = fresnelReflectance(n, cosTheta) / fresnelReflectance(GLOSS_STANDARD_INDEX, cosTheta);
  const place = KNOTS_PER_LOG * Math.log(Math.min(1, Math.max(SMOOTHEST, alpha)) / SMOOTHEST);
  const above = Math.max(
    1,
    INDEXES.findIndex((index) => index >= n),
  );
  const nAbove = INDEXES[above]!;
  const nBelow = INDEXES[above - 1]!;
  const share = Math.min(1, Math.max(0, (n - nBelow) / (nAbove - nBelow)));
  const lower = share < 1 ? interpolated(curves.shares[angleDeg][above - 1]!, place) : 0;
  const upper = share > 0 ? interpolated(curves.shares[angleDeg][above]!, place) : 0;
  return 100 * polish * ((1 - share) * lower + share * upper);
}

/**
 * Cubic Hermite interpolation that keeps a falling curve falling.
 *
 * @see Fritsch & Butland 1984: slope at a knot is the harmonic mean of its two chords.
 */
function interpolated(values: readonly number[], place: number): number {
  const knot = Math.min(values.length - 2, Math.floor(place));
  const t = place - knot;
  const from = values[knot]!;
  const to = values[knot + 1]!;
  const chord = to - from;
  const slopeFrom = knotSlope(knot > 0 ? from - values[knot - 1]! : chord, chord);
  const slopeTo = knotSlope(chord, knot + 2 < values.length ? values[knot + 2]! - to : chord);
  const t2 = t * t;
  const t3 = t2 * t;
  return from + chord * (3 * t2 - 2 * t3) + slopeFrom * (t3 - 2 * t2 + t) + slopeTo * (t3 - t2);
}

function knotSlope(before: number, after: number): number {
  return before * after > 0 ? (2 * before * after) / (before + after) : 0;
}
