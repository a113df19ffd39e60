import type { Raster } from '../image/raster';
import { LowestFirst } from './lowestFirst';

/**
 * Gives every pixel to the marker from which it is reached at the least total cost.
 *
 * Unlike a watershed, which asks only for the highest pass on the way, a gap in a faint outline costs little
 * to a near marker and much to a far one, so areas do not leak through it.
 *
 * @param cost - One channel, cost of stepping onto each pixel, ≥ 0.
 * @param markers - Row-major, a positive number at each marker's pixels and 0 elsewhere.
 * @returns Row-major, the number of each pixel's marker.
 * @throws RangeError if the sizes differ or a cost is negative or not a number.
 * @see Dijkstra 1959, Numerische Mathematik 1; Bai and Sapiro 2007, "A geodesic framework for image segmentation".
 */
export function cheapestMarker(cost: Raster, markers: Int32Array): Int32Array {
  const { width, height, data } = cost;
  if (data.length !== markers.length) {
    throw new RangeError('Costs and markers must be of one size and one channel.');
  }
  if (!data.every((step) => step >= 0)) throw new RangeError('Every cost must be a number, 0 or more.');
  const labels = new Int32Array(markers.length);
  const total = new Float64Array(markers.length).fill(Number.POSITIVE_INFINITY);
  // A pixel's neighbors are taken in the order of their totals, so it is reached more cheaply a second time only
  // if it was reached across a corner first: at most two entries a pixel.
  const open = new LowestFirst(2 * markers.length);
  const done = new Uint8Array(markers.length);
  for (let pixel = 0; pixel < markers.length; pixel++) {
    if (markers[pixel] === 0) continue;
    total[pixel] = 0;
    labels[pixel] = markers[pixel]!;
    // From amid other markers nothing is reached: theirs is no cost already.
    if (hasFreeNeighbor(markers, pixel, width, height)) open.add(pixel, 0);
    else done[pixel] = 1;
  }
  for (let pixel = open.take(); pixel >= 0; pixel = open.take()) {
    if (done[pixel]) continue;
    done[pixel] = 1;
    const column = pixel % width;
    const row = (pixel - column) / width;
    const firstRow = Math.max(0, row - 1);
    const lastRow = Math.min(height - 1, row + 1);
    const firstColumn = Math.max(0, column - 1);
    const lastColumn = Math.min(width - 1, column + 1);
    const here = total[pixel]!;
    for (let y = firstRow; y <= lastRow; y++) {
      for (let x = firstColumn; x <= lastColumn; x++) {
        const next = y * width + x;
        if (done[next]) continue;
        const stretch = x !== column && y !== row ? Math.SQRT2 : 1;
        const sum = here + stretch * data[next]!;
        if (sum >= total[next]!) continue;
        total[next] = sum;
        labels[next] = labels[pixel]!;
        open.add(next, sum);
      }
    }
  }
  return labels;
}

function hasFreeNeighbor(markers: Int32Array, pixel: number, width: number, height: number): boolean {
  const column = pixel % width;
  const row = (pixel - column) / width;
  const lastRow = Math.min(height - 1, row + 1);
  const lastColumn = Math.min(width - 1, column + 1);
  for (let y = Math.max(0, row - 1); y <= lastRow; y++) {
    for (let x = Math.max(0, column - 1); x <= lastColumn; x++) if (markers[y * width + x] === 0) return true;
  }
  return false;
}
