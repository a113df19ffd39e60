import type { Mask, Raster } from '../image/raster';
import { LowestFirst } from './lowestFirst';

/**
 * Floods a relief from markers: every pixel goes to the marker whose water reaches it first, so borders run along
 * the ridges. (OpenCV's function of this name floods by the difference of neighboring pixels, not by height.)
 *
 * @param relief - One channel; low is a basin.
 * @param markers - Row-major, a positive number at each marker's pixels and 0 elsewhere; several pixels may share one.
 * @param within - Pixels that can be flooded; all when left out.
 * @returns Row-major, the number of each pixel's marker; 0 where no water came.
 * @throws RangeError if the sizes differ.
 * @see Meyer 1992, "Color image segmentation": flooding by a queue in order of height.
 */
export function watershed(relief: Raster, markers: Int32Array, within?: Mask): Int32Array {
  const { width, height, data } = relief;
  if (data.length !== markers.length || (within && within.data.length !== markers.length)) {
    throw new RangeError('Relief, markers and mask of a watershed must be of one size and one channel.');
  }
  const labels = new Int32Array(markers.length);
  const shore = new LowestFirst(markers.length);
  const reach = (pixel: number, label: number) => {
    if (labels[pixel] !== 0 || within?.data[pixel] === 0) return;
    labels[pixel] = label;
    shore.add(pixel, data[pixel]!);
  };
  markers.forEach((label, pixel) => {
    if (label > 0) reach(pixel, label);
  });
  for (let pixel = shore.take(); pixel >= 0; pixel = shore.take()) {
    const column = pixel % width;
    const label = labels[pixel]!;
    if (pixel >= width) reach(pixel - width, label);
    if (column > 0) reach(pixel - 1, label);
    if (column < width - 1) reach(pixel + 1, label);
    if (pixel < width * (height - 1)) reach(pixel + width, label);
  }
  return labels;
}
