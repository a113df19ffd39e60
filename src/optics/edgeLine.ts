/** A part of a picture in linear light: row-major, one value a pixel. */
export interface EdgeRegion {
  readonly width: number;
  readonly height: number;
  readonly data: ArrayLike<number>;
}

/** A near-vertical edge as a straight line: `column = columnAtTop + columnsPerRow · row`. */
export interface EdgeLine {
  readonly columnAtTop: number;
  readonly columnsPerRow: number;
}

/**
 * The straight line through a near-vertical edge: centroids of each row's gradient, fitted twice.
 *
 * The second fit weighs each row's gradient with a Hamming window about the first line, so that
 * noise and shading far from the edge do not pull the centroids.
 *
 * @param region - Linear light, any scale; dark to bright or bright to dark.
 * @returns The line, in pixels of the region.
 * @throws RangeError if the region is smaller than 10 × 10 pixels or no row holds an edge.
 * @see ISO 12233:2017, annex D (slanted-edge analysis: centroids and line fit).
 */
export function edgeLine(region: EdgeRegion): EdgeLine {
  const { width, height } = region;
  if (!(width >= 10 && height >= 10)) {
    throw new RangeError(`An edge needs a region of at least 10 × 10 pixels, not ${width} × ${height}.`);
  }
  const middle = (width - 1) / 2;
  const first = lineThrough(centroids(region, () => middle));
  return lineThrough(centroids(region, (row) => first.columnAtTop + first.columnsPerRow * row));
}

function centroids(region: EdgeRegion, centerOf: (row: number) => number): [row: number, column: number][] {
  const { width, height, data } = region;
  const sign = Math.sign(contrast(region));
  const points: [number, number][] = [];
  for (let row = 0; row < height; row++) {
    const center = centerOf(row);
    const reach = Math.max(center, width - 1 - center);
    let sum = 0;
    let moment = 0;
    for (let column = 1; column < width - 1; column++) {
      const at = row * width + column;
      const weight = 0.54 + 0.46 * Math.cos((Math.PI * (column - center)) / reach);
      const gradient = weight * sign * (data[at + 1]! - data[at - 1]!);
      sum += gradient;
      moment += gradient * column;
    }
    if (sum > 0) points.push([row, moment / sum]);
  }
  if (points.length < height / 2) {
    throw new RangeError('No edge was found: the region is as bright on the left as on the right.');
  }
  return points;
}

/** Brightness of the right border less that of the left border, summed over the rows. */
function contrast({ width, height, data }: EdgeRegion): number {
  let difference = 0;
  for (let row = 0; row < height; row++) {
    for (let inward = 0; inward < 3; inward++) {
      difference += data[row * width + width - 1 - inward]! - data[row * width + inward]!;
    }
  }
  return difference;
}

function lineThrough(points: readonly [row: number, column: number][]): EdgeLine {
  const meanRow = points.reduce((sum, [row]) => sum + row, 0) / points.length;
  const meanColumn = points.reduce((sum, [, column]) => sum + column, 0) / points.length;
  let rowSquares = 0;
  let products = 0;
  for (const [row, column] of points) {
    rowSquares += (row - meanRow) ** 2;
    products += (row - meanRow) * (column - meanColumn);
  }
  const columnsPerRow = products / rowSquares;
  return { columnAtTop: meanColumn - columnsPerRow * meanRow, columnsPerRow };
}
