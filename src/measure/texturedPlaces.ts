import type { LightSlopes } from './lightSlopes';

/** One place is taken from each cell of so many rows and columns. */
const CELLS = { rows: 5, columns: 7 };
/** A place needs slopes both ways of at least so much, root mean square of ln light per pixel. */
const LEAST_SLOPE = 0.004;

/**
 * Places spread over a picture whose slopes point both ways, so that they can be found again in another.
 *
 * @param slopes - Of the picture.
 * @param sidePx - Side of the square that counts around a place, pixels.
 * @returns Centers of at most 35 squares.
 */
export function texturedPlaces(slopes: LightSlopes, sidePx: number): { row: number; column: number }[] {
  const places: { row: number; column: number }[] = [];
  const cell = { height: slopes.height / CELLS.rows, width: slopes.width / CELLS.columns };
  const stride = Math.max(1, Math.floor(sidePx / 3));
  const half = Math.floor(sidePx / 2);
  for (let y = 0; y < CELLS.rows; y++) {
    for (let x = 0; x < CELLS.columns; x++) {
      let best = { row: 0, column: 0, texture: LEAST_SLOPE ** 2 * sidePx * sidePx };
      for (let row = Math.ceil(y * cell.height); row < (y + 1) * cell.height; row += stride) {
        for (let column = Math.ceil(x * cell.width); column < (x + 1) * cell.width; column += stride) {
          const texture = textureAround(slopes, row, column, half);
          if (texture > best.texture) best = { row, column, texture };
        }
      }
      if (best.row > 0) places.push({ row: best.row, column: best.column });
    }
  }
  return places;
}

/** The lesser of the sums of squared slopes down and right; squares that leave the picture have none. */
function textureAround(
  { width, height, down, right }: LightSlopes,
  row: number,
  column: number,
  half: number,
) {
  if (row < half || column < half || row + half >= height || column + half >= width) return 0;
  let [downward, rightward] = [0, 0];
  for (let y = row - half; y < row + half; y++) {
    for (let i = y * width + column - half; i < y * width + column + half; i++) {
      const both = down[i]! + right[i]!;
      if (Number.isNaN(both)) continue;
      downward += down[i]! ** 2;
      rightward += right[i]! ** 2;
    }
  }
  return Math.min(downward, rightward);
}
