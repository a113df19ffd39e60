import { nthSmallest } from '../image/nthSmallest';
import type { Raster } from '../image/raster';
import type { Circle } from './circleFit';
import { samplePixel } from './samplePixel';

const RAYS = 60;
/** Centers tried around the first one, and radii, shares of its radius. */
const REACH = { center: 0.36, step: 0.06 };
const RADII = [0.76, 0.8, 0.84, 0.88, 0.92, 0.96, 1, 1.05, 1.1];
/** Half the width over which a step counts, shares of the radius; a shadow's edge is softer. */
const MARGIN = { share: 0.04, leastPx: 1.2 };
/** Step in ln radiance that counts as a full edge. */
const FULL_STEP = 0.5;
/** Outside the rim lies tray: a step up to less than this share of the picture's usual light counts for less, as in `findBall`. */
const TRAY_SHARE = 0.5;

/**
 * Moves a rough circle to where most of it lies on a sharp step from dark inside to bright outside.
 *
 * A ball and its shadow together make a larger dark round with a soft edge, which a rough search can prefer. The glass
 * mirrors the horizon as a dark round inside its rim, whose edge can be clearer: what lies outside of that is no tray.
 *
 * @param light - One-channel radiance of the whole picture, 0 to 1.
 * @param rough - Circle that overlaps the ball.
 * @returns The best circle near it, to about a twentieth of the radius.
 */
export function sharpestCircle(light: Raster, rough: Circle): Circle {
  let best = rough;
  let score = Number.NEGATIVE_INFINITY;
  const trayLight = TRAY_SHARE * usualLight(light);
  const reach = Math.round(REACH.center / REACH.step);
  for (const share of RADII) {
    const radiusPx = share * rough.radiusPx;
    for (let y = -reach; y <= reach; y++) {
      for (let x = -reach; x <= reach; x++) {
        if (y * y + x * x > reach * reach) continue;
        const step = REACH.step * rough.radiusPx;
        const circle = {
          row: rough.row + y * step,
          column: rough.column + x * step,
          radiusPx,
        };
        const found = sharpness(light, circle, trayLight, score);
        if (found > score) [score, best] = [found, circle];
      }
    }
  }
  return best;
}

/** Median of every sixteenth pixel: a live picture is asked for it again and again. */
function usualLight({ data }: Raster): number {
  const some = Float32Array.from({ length: Math.ceil(data.length / 16) }, (_, i) => data[16 * i]!);
  return nthSmallest(some, some.length >> 1)!;
}

// Spread evenly from the first few on, so that a poor circle is given up early.
const ANGLES = Float64Array.from({ length: RAYS }, (_, i) => (2 * Math.PI * ((i * 37) % RAYS)) / RAYS);
const DOWN = ANGLES.map(Math.sin);
const RIGHT = ANGLES.map(Math.cos);

/** Sum of the steps around the circle, each cut off at a full edge; stops once it can't beat the best. */
function sharpness(
  light: Raster,
  { row, column, radiusPx }: Circle,
  trayLight: number,
  beat: number,
): number {
  const margin = Math.max(MARGIN.leastPx, MARGIN.share * radiusPx);
  const far = radiusPx + margin;
  const near = radiusPx - margin;
  let sum = 0;
  for (let i = 0; i < RAYS; i++) {
    const down = DOWN[i]!;
    const right = RIGHT[i]!;
    const outside = samplePixel(light, row + far * down, column + far * right) + 0.002;
    const inside = samplePixel(light, row + near * down, column + near * right) + 0.002;
    const belief = Math.min(1, outside / trayLight);
    sum += belief * Math.min(FULL_STEP, Math.max(-FULL_STEP / 2, Math.log(outside / inside)));
    if (sum + (RAYS - 1 - i) * FULL_STEP <= beat) return sum;
  }
  return sum;
}
