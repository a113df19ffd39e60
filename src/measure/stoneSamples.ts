import type { Mask, Raster } from '../image/raster';
import { clippedPixels } from './clippedPixels';
import { type Silhouette, silhouetteOf } from './stoneRelief';

/** A stone's light on a coarse grid. */
export interface StoneSamples {
  /** Place from the silhouette's middle, crop pixels, x right and y up. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Linear light, three channels a sample. */
  readonly light: Float64Array;
  /** Index of each sample on the grid, and the grid's columns. */
  readonly cell: Int32Array;
  readonly columns: number;
  readonly silhouette: Silhouette;
}

/** Cells along the longer side. */
const CELLS = 30;

/** Averages a stone's light over the cells that lie wholly on it and are not clipped. */
export function stoneSamples(stone: Raster, mask: Mask): StoneSamples {
  const silhouette = silhouetteOf(mask);
  const clipped = clippedPixels(stone);
  const side = Math.max(1, Math.ceil(Math.max(stone.width, stone.height) / CELLS));
  const columns = Math.floor(stone.width / side);
  const rows = Math.floor(stone.height / side);
  const x: number[] = [];
  const y: number[] = [];
  const cell: number[] = [];
  const light: number[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const mean = cellMean(stone, mask, clipped, row * side, column * side, side);
      if (!mean) continue;
      x.push(column * side + (side - 1) / 2 - silhouette.column);
      y.push(silhouette.row - row * side - (side - 1) / 2);
      cell.push(row * columns + column);
      light.push(...mean);
    }
  }
  return {
    x: Float64Array.from(x),
    y: Float64Array.from(y),
    light: Float64Array.from(light),
    cell: Int32Array.from(cell),
    columns,
    silhouette,
  };
}

function cellMean(
  stone: Raster,
  mask: Mask,
  clipped: Mask,
  top: number,
  left: number,
  side: number,
): number[] | null {
  const sum = [0, 0, 0];
  for (let row = top; row < top + side; row++) {
    for (let column = left; column < left + side; column++) {
      const i = row * stone.width + column;
      if (!mask.data[i] || clipped.data[i]) return null;
      for (let c = 0; c < 3; c++) sum[c]! += stone.data[3 * i + c]!;
    }
  }
  return sum.map((value) => value / (side * side));
}

/** Share of a grid's samples that are independent, from the correlation of neighbors' residuals under a start fit. */
export function independentSamples(samples: StoneSamples, residuals: Float64Array): number {
  const place = new Map<number, number>();
  samples.cell.forEach((cell, i) => {
    place.set(cell, i);
  });
  const share = (offset: number) => {
    let product = 0;
    let square = 0;
    samples.cell.forEach((cell, i) => {
      const j = place.get(cell + offset);
      if (j === undefined) return;
      for (let c = 0; c < 3; c++) {
        product += residuals[3 * i + c]! * residuals[3 * j + c]!;
        square += (residuals[3 * i + c]! ** 2 + residuals[3 * j + c]! ** 2) / 2;
      }
    });
    const correlation = square > 0 ? Math.min(0.97, Math.max(0, product / square)) : 0;
    return (1 - correlation) / (1 + correlation);
  };
  return share(1) * share(samples.columns);
}
