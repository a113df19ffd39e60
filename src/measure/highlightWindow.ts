import type { Mask, Raster } from '../image/raster';
import type { HighlightWindow } from './highlightModel';

/** Window pixels across, at most; larger windows are averaged down. */
const LONGEST_SIDE = 43;

/**
 * Cuts a window around a possible highlight and averages it down to at most 43 × 43 pixels.
 *
 * @param light - One-channel radiance of the stone's crop.
 * @param mask - The stone in that crop.
 * @param clipped - Pixels at which the camera was at its limit.
 * @param center - Row and column in the crop.
 * @param reachPx - Half the window's side, pixels.
 * @returns The window, with rows and columns counted in the crop.
 */
export function highlightWindow(
  light: Raster,
  mask: Mask,
  clipped: Mask,
  center: { readonly row: number; readonly column: number },
  reachPx: number,
): HighlightWindow {
  const stepPx = Math.max(1, Math.ceil((2 * reachPx + 1) / LONGEST_SIDE));
  const across = (limit: number, middle: number) => {
    const first = Math.max(0, Math.round(middle - reachPx));
    const count = Math.floor((Math.min(limit, Math.round(middle + reachPx) + 1) - first) / stepPx);
    return { first, count: Math.max(1, count) };
  };
  const rows = across(light.height, center.row);
  const columns = across(light.width, center.column);
  const values = new Float64Array(rows.count * columns.count);
  const use = new Uint8Array(values.length);
  for (let y = 0, i = 0; y < rows.count; y++) {
    for (let x = 0; x < columns.count; x++, i++) {
      const block = blockOf(
        light,
        mask,
        clipped,
        rows.first + y * stepPx,
        columns.first + x * stepPx,
        stepPx,
      );
      values[i] = block.mean;
      use[i] = block.use;
    }
  }
  const middle = (stepPx - 1) / 2;
  return {
    width: columns.count,
    height: rows.count,
    stepPx,
    row: rows.first + middle,
    column: columns.first + middle,
    values,
    use,
  };
}

/** Mean of a block and whether it counts: wholly stone, and clipped when any of it is. */
function blockOf(light: Raster, mask: Mask, clipped: Mask, row: number, column: number, side: number) {
  let sum = 0;
  let inside = 0;
  let atLimit = 0;
  for (let y = row; y < row + side; y++) {
    for (let x = column; x < column + side; x++) {
      const i = y * light.width + x;
      sum += light.data[i] ?? 0;
      inside += mask.data[i] ?? 0;
      atLimit += clipped.data[i] ?? 0;
    }
  }
  const use = inside < side * side ? 0 : atLimit > 0 ? 2 : 1;
  return { mean: sum / (side * side), use };
}
