import type { Raster } from '../image/raster';
import { type BowlBasis, bowlBasis } from './bowlBasis';
import { type BowlFit, bowlFit } from './bowlFit';
import type { DarkSpot } from './darkSpots';

/** Radii tried, in shares of the spot's: what is seen first of a pit is the crescent in its shade. */
const SHARES = [0.8, 1.2, 1.8, 2.7];
/** Steps of the search for the center, in radii. */
const STEP = 0.3;
const MOST_STEPS = 6;

/**
 * The bowl that explains a dark spot best, free in place and size.
 *
 * @param light - Log light, filled beyond the stone.
 * @param spot - Where to look.
 * @param bases - Bowls by radius in pixels; those that are missing are added.
 * @param lampSide - Unit vector in the picture toward the lamp: x right, y up.
 * @param mostPx - Largest radius tried, pixels.
 * @returns The best fit; its `flatGain` is that of the best flat spot met on the way, of whatever place and size.
 */
export function bestBowl(
  light: Raster,
  spot: DarkSpot,
  bases: Map<number, BowlBasis>,
  lampSide: readonly [number, number],
  mostPx: number,
): BowlFit {
  let best: BowlFit | null = null;
  let flatGain = 0;
  for (const share of SHARES) {
    const radiusPx = Math.round(4 * share * spot.radiusPx) / 4;
    if (radiusPx > mostPx && best) break;
    const basis = bases.get(radiusPx) ?? bowlBasis(radiusPx);
    bases.set(radiusPx, basis);
    const fit = climb(light, basis, spot, lampSide);
    if (!best || fit.gain > best.gain) best = fit;
    flatGain = Math.max(flatGain, fit.flatGain);
  }
  return { ...best!, flatGain };
}

/** Moves the center uphill. */
function climb(
  light: Raster,
  basis: BowlBasis,
  spot: DarkSpot,
  lampSide: readonly [number, number],
): BowlFit {
  const step = Math.max(1, Math.round(STEP * basis.radiusPx));
  const reach = 1.2 * basis.radiusPx + 1;
  let best = bowlFit(light, basis, spot.row, spot.column, lampSide);
  let flatGain = best.flatGain;
  for (let k = 0; k < MOST_STEPS; k++) {
    const from = best;
    for (const [y, x] of NEIGHBORS) {
      const row = from.row + step * y;
      const column = from.column + step * x;
      if (Math.hypot(row - spot.row, column - spot.column) > reach) continue;
      const fit = bowlFit(light, basis, row, column, lampSide);
      flatGain = Math.max(flatGain, fit.flatGain);
      if (fit.gain > best.gain) best = fit;
    }
    if (best === from) break;
  }
  return { ...best, flatGain };
}

const NEIGHBORS = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
] as const;
