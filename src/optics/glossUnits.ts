import { fresnelReflectance } from './fresnelReflectance';
import { GLOSS_STANDARD_INDEX, type GlossAngleDeg } from './glossGeometry';
import { glossIntegral } from './glossIntegral';

/** Roughnesses at which a curve is integrated: the logarithm runs evenly from the smoothest to 1. */
const SMOOTHEST = 1e-4;
const KNOTS = 41;
const KNOTS_PER_LOG = (KNOTS - 1) / -Math.log(SMOOTHEST);
/** Indexes at which curves are integrated; the share of a perfect polish hardly changes in between. */
const INDEXES = [1.3, 1.75, 2.5];
const RADIANS = Math.PI / 180;

const curves = new Map<string, Float64Array>();

/**
 * Estimated reading of a gloss meter on a flat surface of a given roughness; `glossIntegral`, interpolated.
 *
 * What a rough surface reads as a share of a perfect polish depends little on the index, so it is interpolated
 * between curves of a few indexes, and the polish itself is exact. A call that needs a new curve takes some 10 ms
 * for it, all others about a microsecond.
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
  const lower = share < 1 ? interpolated(curveOf(nBelow, angleDeg), place) : 0;
  const upper = share > 0 ? interpolated(curveOf(nAbove, angleDeg), place) : 0;
  return 100 * polish * ((1 - share) * lower + share * upper);
}

/** Readings from the smoothest to the roughest surface as shares of a perfect polish of the same index. */
function curveOf(n: number, angleDeg: GlossAngleDeg): Float64Array {
  const key = `${angleDeg} ${n}`;
  const known = curves.get(key);
  if (known) return known;
  const polish = glossIntegral(0, n, angleDeg);
  const curve = Float64Array.from({ length: KNOTS }, (_, knot) => {
    const alpha = Math.min(1, SMOOTHEST * Math.exp(knot / KNOTS_PER_LOG));
    return glossIntegral(alpha, n, angleDeg) / polish;
  });
  curves.set(key, curve);
  return curve;
}

/**
 * Cubic Hermite interpolation that keeps a falling curve falling.
 *
 * @see Fritsch & Butland 1984: slope at a knot is the harmonic mean of its two chords.
 */
function interpolated(values: Float64Array, place: number): number {
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
