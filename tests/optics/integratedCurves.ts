import type { GlossAngleDeg } from '../../src/optics/glossGeometry';
import { glossIntegral } from '../../src/optics/glossIntegral';

const ANGLES_DEG: readonly GlossAngleDeg[] = [20, 60, 85];
/** The share of a perfect polish hardly changes in between. */
const INDEXES = [1.3, 1.75, 2.5];
const SMOOTHEST = 1e-4;
const KNOTS = 41;
/** Far below what a reading is rounded to. */
const DIGITS = 10;

/** What `src/optics/glossCurves.json` is to hold: readings as shares of a perfect polish of the same index, 0 to 1. */
export function integratedCurves() {
  const alphas = Array.from({ length: KNOTS }, (_, knot) => SMOOTHEST ** (1 - knot / (KNOTS - 1)));
  return {
    smoothest: SMOOTHEST,
    indexes: INDEXES,
    shares: Object.fromEntries(
      ANGLES_DEG.map((angleDeg) => [angleDeg, INDEXES.map((n) => sharesAt(alphas, n, angleDeg))]),
    ),
  };
}

function sharesAt(alphas: readonly number[], n: number, angleDeg: GlossAngleDeg): number[] {
  const polish = glossIntegral(0, n, angleDeg);
  return alphas.map((alpha) => Number((glossIntegral(alpha, n, angleDeg) / polish).toPrecision(DIGITS)));
}
