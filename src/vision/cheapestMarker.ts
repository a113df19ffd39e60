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
  const reach = (pixel: number, label: number, before: number, stretch: number) => {
    const sum = before + stretch * data[pixel]!;
    if (sum >= total[pixel]!) return;
    total[pixel] = sum;
    labels[pixel] = label;
    open.add(pixel, sum);
  };
  markers.forEach((label, pixel) => {
    if (label === 0) return;
    total[pixel] = 0;
    labels[pixel] = label;
    open.add(pixel, 0);
  });
  for (let pixel = open.take(); pixel >= 0; pixel = open.take()) {
    if (done[pixel]) continue;
    done[pixel] = 1;
    const column = pixel % width;
    const row = (pixel - column) / width;
    const label = labels[pixel]!;
    const here = total[pixel]!;
    for (let dy = -1; dy <= 1; dy++) {
      for (let dx = -1; dx <= 1; dx++) {
        const inside = row + dy >= 0 && row + dy < height && column + dx >= 0 && column + dx < width;
        if (inside && (dy !== 0 || dx !== 0))
          reach(pixel + dy * width + dx, label, here, dx !== 0 && dy !== 0 ? Math.SQRT2 : 1);
      }
    }
  }
  return labels;
}
