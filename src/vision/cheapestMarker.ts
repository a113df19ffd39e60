import type { Raster } from '../image/raster';
import { LowestFirst } from './lowestFirst';
import { PixelBuckets } from './pixelBuckets';

/** Where the dearest step costs more times the cheapest than this, as on a black or flat picture, a heap serves better. */
const MOST_BUCKETS = 1 << 20;

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
 * @see Dijkstra 1959, Numerische Mathematik 1; Dial 1969, Communications of the ACM 12 (buckets); Bai and Sapiro 2007, "A geodesic framework for image segmentation".
 */
export function cheapestMarker(cost: Raster, markers: Int32Array): Int32Array {
  const { width, height, data } = cost;
  if (data.length !== markers.length) {
    throw new RangeError('Costs and markers must be of one size and one channel.');
  }
  const [least, most] = rangeOf(data);
  if (!(least >= 0)) throw new RangeError('Every cost must be a number, 0 or more.');
  const labels = new Int32Array(markers.length);
  const total = new Float64Array(markers.length).fill(Number.POSITIVE_INFINITY);
  const open = queueFor(markers.length, least, most);
  for (let pixel = 0; pixel < markers.length; pixel++) {
    if (markers[pixel] === 0) continue;
    total[pixel] = 0;
    labels[pixel] = markers[pixel]!;
    // From amid other markers nothing is reached: theirs is no cost already.
    if (hasFreeNeighbor(markers, pixel, width, height)) open.put(pixel, 0);
  }
  for (let pixel = open.take(); pixel >= 0; pixel = open.take()) {
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
        const known = total[next]!;
        if (known <= here) continue;
        const stretch = x !== column && y !== row ? Math.SQRT2 : 1;
        const sum = here + stretch * data[next]!;
        if (sum >= known) continue;
        total[next] = sum;
        labels[next] = labels[pixel]!;
        open.put(next, sum);
      }
    }
  }
  return labels;
}

/** Gives pixels in an order in which none that was taken out is reached more cheaply later. */
interface Queue {
  put(pixel: number, total: number): void;
  take(): number;
}

function queueFor(pixels: number, least: number, most: number): Queue {
  // No step is shorter than a bucket is wide.
  if (most < MOST_BUCKETS * least) return new PixelBuckets(pixels, least, Math.SQRT2 * most);
  // A pixel's neighbors are taken in the order of their totals, so it is reached more cheaply a second time only
  // if it was reached across a corner first: at most two entries a pixel.
  const heap = new LowestFirst(2 * pixels);
  return { put: (pixel, total) => heap.add(pixel, total), take: () => heap.take() };
}

/** Least and most of some numbers; not a number when one of them is none. */
function rangeOf(values: Float32Array): [least: number, most: number] {
  let least = Number.POSITIVE_INFINITY;
  let most = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i]!;
    if (!(value >= least)) least = value;
    if (value > most) most = value;
  }
  return [least, most];
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
