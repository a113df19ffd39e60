import type { EdgeLine, EdgeRegion } from './edgeLine';

/** Samples of the edge spread function per pixel. */
export const EDGE_SAMPLES_PER_PX = 4;

/**
 * Brightness against the distance from a slanted edge, four samples a pixel.
 *
 * Every pixel is put into a bin by its distance at right angles to the edge; a bin has the mean
 * brightness and the mean distance of its pixels, and the samples are read off between them. Only a whole number of the edge's crossings of the pixel grid is used, so that every phase
 * of the grid counts equally.
 *
 * @param region - Linear light, any scale.
 * @param line - The edge in that region; it must drift by at least one column over the rows.
 * @returns Samples from left to right, `EDGE_SAMPLES_PER_PX` a pixel, the edge in the middle sample.
 * @throws RangeError if the edge is so upright that four samples a pixel cannot be had, or runs out of the region.
 * @see ISO 12233:2017, annex D (projection along the edge into quarter-pixel bins).
 */
export function edgeSpread(region: EdgeRegion, line: EdgeLine): Float64Array {
  const { width, height, data } = region;
  const drift = Math.abs(line.columnsPerRow) * height;
  if (drift < 1) throw new RangeError('The edge is too upright: tilt it by 3 to 10 degrees.');
  const bottomColumn = line.columnAtTop + line.columnsPerRow * (height - 1);
  if (Math.min(line.columnAtTop, bottomColumn) < 2 || Math.max(line.columnAtTop, bottomColumn) > width - 3) {
    throw new RangeError('The edge runs out of the region: choose a wider region.');
  }
  const rows = Math.min(height, Math.round(Math.floor(drift) / Math.abs(line.columnsPerRow)));
  const firstRow = Math.floor((height - rows) / 2);
  const cosine = 1 / Math.hypot(1, line.columnsPerRow);
  const half = Math.floor((EDGE_SAMPLES_PER_PX * width * cosine) / 2);
  const bins: EdgeBin[] = Array.from({ length: 2 * half + 1 }, () => ({
    pixels: 0,
    distance: 0,
    brightness: 0,
  }));
  for (let row = firstRow; row < firstRow + rows; row++) {
    const edge = line.columnAtTop + line.columnsPerRow * row;
    for (let column = 0; column < width; column++) {
      const distance = half + EDGE_SAMPLES_PER_PX * (column - edge) * cosine;
      const bin = bins[Math.round(distance)];
      if (!bin) continue;
      bin.pixels += 1;
      bin.distance += distance;
      bin.brightness += data[row * width + column]!;
    }
  }
  return samplesOf(bins);
}

/** Sums over the pixels of one quarter-pixel bin; distance in samples from the left end. */
interface EdgeBin {
  pixels: number;
  distance: number;
  brightness: number;
}

/** Straight lines between the mean points of the bins that hold pixels, read at whole samples. */
function samplesOf(bins: readonly EdgeBin[]): Float64Array {
  const points = bins
    .filter(({ pixels }) => pixels > 0)
    .map(({ pixels, distance, brightness }) => ({ at: distance / pixels, value: brightness / pixels }));
  let next = 1;
  return Float64Array.from(bins.keys(), (sample) => {
    while (next < points.length - 1 && points[next]!.at < sample) next++;
    const before = points[next - 1]!;
    const after = points[next]!;
    const share = Math.min(1, Math.max(0, (sample - before.at) / (after.at - before.at)));
    return before.value + share * (after.value - before.value);
  });
}
