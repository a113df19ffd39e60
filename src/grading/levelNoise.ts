/** How far the root of a level, in limits, is off. */
export interface LevelNoise {
  /**
   * What a stone keeps over its history, normal, standard deviation, ≥ 0: parts that face away at every check, or are
   * read too long each time.
   */
  readonly kept: number;
  /**
   * What is new at each check: scale, > 0, of Student's t with two degrees of freedom. Most readings repeat well, and
   * now and then a whole fracture is missed; a normal distribution fits that far worse (`npm run bench:repeat`).
   */
  readonly fresh: number;
}

/** Steps toward the most likely shift; each weighs the readings by how far off they were at the last. */
const SHIFT_STEPS = 3;

/**
 * Logarithm of how likely a series of readings is under a law, up to a constant for a given number of readings.
 *
 * The shift that all readings share is integrated out by Laplace's method about its most likely value, which is found by
 * iterated weights.
 *
 * @param offs - Root of each level as seen less root of the law's level.
 * @see Lange, Little and Taylor 1989, Robust statistical modeling using the t distribution (weights); from memory.
 */
export function lnLikelihood(offs: ArrayLike<number>, { kept, fresh }: LevelNoise): number {
  const prior = kept > 0 ? 1 / kept ** 2 : Number.POSITIVE_INFINITY;
  const spread = 2 * fresh ** 2;
  let shift = 0;
  for (let step = 0; step < SHIFT_STEPS && kept > 0; step++) {
    let weights = prior;
    let pull = 0;
    for (let t = 0; t < offs.length; t++) {
      const weight = 3 / (spread + (offs[t]! - shift) ** 2);
      weights += weight;
      pull += weight * offs[t]!;
    }
    shift = pull / weights;
  }
  let product = 1;
  let curvature = prior;
  for (let t = 0; t < offs.length; t++) {
    const squared = (offs[t]! - shift) ** 2;
    product *= 1 + squared / spread;
    curvature += (3 * (spread - squared)) / (spread + squared) ** 2;
  }
  const readings = -1.5 * Math.log(product);
  if (kept === 0) return readings;
  return readings - (shift ** 2 * prior) / 2 - Math.log(Math.max(curvature, prior) / prior) / 2;
}
