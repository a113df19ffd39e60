import { bestBowl } from './bestBowl';
import type { BowlBasis } from './bowlBasis';
import { type BowlColor, bowlColor } from './bowlColor';
import { type BowlCrowd, bowlCrowd } from './bowlCrowd';
import type { BowlFit } from './bowlFit';
import { type DarkSpot, darkSpots } from './darkSpots';
import type { Blur, StoneSurface } from './stoneSurface';

/** A place on a stone that may be a hole, with all that is known of it. */
export interface StoneBowl {
  readonly fit: BowlFit;
  readonly color: BowlColor;
  readonly crowd: BowlCrowd;
}

/** So many of the darkest spots are looked at; more are never flaws, and cost time. */
const MOST_SPOTS = 180;
/** Largest bowl tried, mm: a chip. */
const MOST_RADIUS_MM = 3.4;
/** Grain is averaged over this before bowls are fitted, mm. */
const GRAIN_MM = 0.06;
/** A spot within half the radius of a fitted bowl, and of about its size, is that bowl's. */
const SAME = { distance: 0.5, size: 0.4 };

/**
 * Fits a bowl to every dark spot of a stone.
 *
 * @param surface - The stone.
 * @param blur - Gaussian blur.
 */
export function stoneBowls(surface: StoneSurface, blur: Blur): StoneBowl[] {
  const { colorless, color, inner, seen, mmPerPx, lampSide } = surface;
  const light = blur(colorless, Math.max(0.5, GRAIN_MM / mmPerPx));
  const bases = new Map<number, BowlBasis>();
  const fits: BowlFit[] = [];
  for (const spot of darkSpots(surface, blur).slice(0, MOST_SPOTS)) {
    if (fits.some((fit) => isSame(fit, spot))) continue;
    fits.push(bestBowl(light, spot, bases, lampSide, MOST_RADIUS_MM / mmPerPx));
  }
  const colors = fits.map((fit) => bowlColor(color, inner, fit));
  const areaCm2 = (seen.data.reduce((sum, inside) => sum + inside, 0) * mmPerPx * mmPerPx) / 100;
  return fits.map((fit, i) => ({
    fit,
    color: colors[i]!,
    crowd: bowlCrowd(fits, colors, i, areaCm2),
  }));
}

function isSame(fit: BowlFit, spot: DarkSpot): boolean {
  const distance = Math.hypot(fit.row - spot.row, fit.column - spot.column);
  return (
    distance < SAME.distance * fit.radiusPx && Math.abs(Math.log(fit.radiusPx / spot.radiusPx)) < SAME.size
  );
}
