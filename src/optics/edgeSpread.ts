import type { EdgeLine, EdgeRegion } from './edgeLine';

/** Samples of the edge spread function per pixel. */
export const EDGE_SAMPLES_PER_PX = 4;

/**
 * Brightness against the distance from a slanted edge, four samples a pixel.
 *
 * Every pixel is put into a bin by its distance at right angles to the edge; a bin is the mean of its
 * pixels. Only a whole number of the edge's crossings of the pixel grid is used, so that every phase
 * of the grid counts equally. Empty bins are filled from their neighbors.
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
  const sums = new Float64Array(2 * half + 1);
  const counts = new Float64Array(2 * half + 1);
  for (let row = firstRow; row < firstRow + rows; row++) {
    const edge = line.columnAtTop + line.columnsPerRow * row;
    for (let column = 0; column < width; column++) {
      const bin = half + Math.round(EDGE_SAMPLES_PER_PX * (column - edge) * cosine);
      if (bin < 0 || bin > 2 * half) continue;
      sums[bin]! += data[row * width + column]!;
      counts[bin]! += 1;
    }
  }
  return filled(sums, counts);
}

function filled(sums: Float64Array, counts: Float64Array): Float64Array {
  const known = Array.from(counts.keys()).filter((bin) => counts[bin]! > 0);
  const spread = new Float64Array(sums.length);
  let next = 0;
  for (let bin = 0; bin < sums.length; bin++) {
    while (next < known.length - 1 && known[next]! < bin) next++;
    const after = known[next]!;
    const before = after <= bin ? after : (known[next - 1] ?? after);
    const share = after > before ? (bin - before) / (after - before) : 0;
    spread[bin] = (1 - share) * (sums[before]! / counts[before]!) + share * (sums[after]! / counts[after]!);
  }
  return spread;
}
