import type { Raster } from '../image/raster';
import { sampleColor } from './samplePixel';

type Point = readonly [row: number, column: number];

/** Places tried along the normal, this far apart and this far in and out, pixels. */
const PITCH = 0.25;
const REACH = 2.5;
/** Penalty on a change of place from one point to the next, and on the distance from where it was, per pixel². */
const BEND_COST = 1.2;
const STRAY_COST = 0.06;
/** Largest change of place between neighbors, in pitches. */
const MOST_BEND = 2;
/** Edge strength is compared with this quantile along the outline, so that faint parts are followed as well. */
const USUAL_QUANTILE = 0.3;

/**
 * Moves an outline onto the steepest change of color across it.
 *
 * At every point a place along the normal is chosen so that the edges passed add up to the most while the
 * outline stays smooth: dynamic programming around the outline, twice, so that its end meets its beginning.
 *
 * @param picture - RGB raster in linear light.
 * @param outline - Closed, about one point a pixel, first not repeated, within two pixels of the edge.
 * @param normals - Unit vectors out of the shape, one a point.
 * @returns As many points.
 * @see Amini, Weymouth, Jain 1990, IEEE Trans. Pattern Anal. Mach. Intell. 12(9).
 */
export function snapOutline(picture: Raster, outline: readonly Point[], normals: readonly Point[]): Point[] {
  const places = 2 * Math.round(REACH / PITCH) + 1;
  const gains = edgeGains(picture, outline, normals, places);
  const chosen = bestPlaces(gains, outline.length, places);
  return outline.map(([row, column], i): Point => {
    const shift = (chosen[i]! - (places >> 1)) * PITCH;
    return [row + shift * normals[i]![0], column + shift * normals[i]![1]];
  });
}

/** What each place of each point is worth: the edge there, 0 to 1, less the cost of straying. */
function edgeGains(
  picture: Raster,
  outline: readonly Point[],
  normals: readonly Point[],
  places: number,
): Float64Array {
  const strengths = new Float64Array(outline.length * places);
  const lag = Math.round(1 / PITCH);
  outline.forEach(([row, column], i) => {
    const [down, right] = normals[i]!;
    const colors = Array.from({ length: places + 2 * lag }, (_, k) => {
      const shift = (k - lag - (places >> 1)) * PITCH;
      return sampleColor(picture, row + shift * down, column + shift * right);
    });
    for (let k = 0; k < places; k++) {
      const [r0, g0, b0] = colors[k]!;
      const [r1, g1, b1] = colors[k + 2 * lag]!;
      strengths[i * places + k] = Math.sqrt((r1 - r0) ** 2 + (g1 - g0) ** 2 + (b1 - b0) ** 2);
    }
  });
  const usual = strengths.slice().sort()[Math.floor(USUAL_QUANTILE * strengths.length)]! + 1e-6;
  for (let i = 0; i < outline.length; i++) {
    const own = strengths.subarray(i * places, (i + 1) * places);
    const most = own.reduce((a, b) => Math.max(a, b), 1e-9);
    const weight = most / (most + 2 * usual);
    own.forEach((strength, k) => {
      const shift = (k - (places >> 1)) * PITCH;
      own[k] = weight * (strength / most) ** 2 - STRAY_COST * shift * shift;
    });
  }
  return strengths;
}

function bestPlaces(gains: Float64Array, points: number, places: number): Int32Array {
  const turns = 2 * points;
  let total = gains.slice(0, places);
  const cameFrom = new Int32Array(turns * places);
  for (let step = 1; step < turns; step++) {
    const next = new Float64Array(places);
    const at = (step % points) * places;
    for (let k = 0; k < places; k++) {
      let best = Number.NEGATIVE_INFINITY;
      for (let j = Math.max(0, k - MOST_BEND); j <= Math.min(places - 1, k + MOST_BEND); j++) {
        const value = total[j]! - BEND_COST * ((k - j) * PITCH) ** 2;
        if (value > best) {
          best = value;
          cameFrom[step * places + k] = j;
        }
      }
      next[k] = best + gains[at + k]!;
    }
    total = next;
  }
  const chosen = new Int32Array(points);
  let place = total.indexOf(Math.max(...total));
  for (let step = turns - 1; step > 0; step--) {
    // The middle of the two rounds feels neither the beginning nor the end.
    const isMiddle = step >= points >> 1 && step < (points >> 1) + points;
    if (isMiddle) chosen[step % points] = place;
    place = cameFrom[step * places + place]!;
  }
  if (points >> 1 === 0) chosen[0] = place;
  return chosen;
}
