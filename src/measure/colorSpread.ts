import type { Raster } from '../image/raster';
import type { HighlightFit } from './highlightFit';
import type { HighlightWindow } from './highlightModel';
import { solveSymmetric } from './solveSymmetric';

const TERMS = 4;

/**
 * How unequal a highlight is among the color channels.
 *
 * The lamp's image adds the same light to all three channels, a spot of mineral adds its own color. In each
 * channel a plane and the fitted lobe are matched to the window; the lobe's strengths are compared.
 *
 * @param stone - RGB raster of the stone's crop, lamp white = (1, 1, 1).
 * @param window - The window of the fit in that crop.
 * @param fit - The fit.
 * @returns Largest less smallest strength over the mean strength, ≥ 0; infinite when the mean is not above zero.
 */
export function colorSpread(stone: Raster, window: HighlightWindow, fit: HighlightFit): number {
  const strengths = [0, 1, 2].map((channel) => lobeStrength(stone, channel, window, fit));
  const mean = (strengths[0]! + strengths[1]! + strengths[2]!) / 3;
  return mean > 0 ? (Math.max(...strengths) - Math.min(...strengths)) / mean : Number.POSITIVE_INFINITY;
}

function lobeStrength(stone: Raster, channel: number, window: HighlightWindow, fit: HighlightFit): number {
  const normal = new Float64Array(TERMS * TERMS);
  const right = new Float64Array(TERMS);
  const first = (at: number) => Math.round(at - (window.stepPx - 1) / 2);
  for (let y = 0, i = 0; y < window.height; y++) {
    for (let x = 0; x < window.width; x++, i++) {
      if (window.use[i] !== 1) continue;
      const row = first(window.row) + y * window.stepPx;
      const column = first(window.column) + x * window.stepPx;
      const value = blockMean(stone, channel, row, column, window.stepPx);
      const terms = [1, x / window.width - 0.5, y / window.height - 0.5, fit.lobe[i]!];
      for (let j = 0; j < TERMS; j++) {
        right[j]! += terms[j]! * value;
        for (let k = 0; k <= j; k++) normal[j * TERMS + k]! += terms[j]! * terms[k]!;
      }
    }
  }
  for (let j = 0; j < TERMS; j++) normal[j * TERMS + j]! += 1e-9;
  return solveSymmetric(normal, right)?.[TERMS - 1] ?? 0;
}

function blockMean(stone: Raster, channel: number, row: number, column: number, side: number): number {
  let sum = 0;
  for (let y = row; y < row + side; y++) {
    for (let x = column; x < column + side; x++) sum += stone.data[3 * (y * stone.width + x) + channel]!;
  }
  return sum / (side * side);
}
