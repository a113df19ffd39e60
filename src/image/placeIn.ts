import type { Placing } from './photo';

/**
 * Where a pixel of one shot lies in another of the same size.
 *
 * @param size - Of either, pixels.
 * @returns Row and column in the other shot.
 */
export function placeIn(
  { down, right, turn, grow }: Placing,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
  row: number,
  column: number,
): readonly [row: number, column: number] {
  const r = row - (heightPx - 1) / 2;
  const c = column - (widthPx - 1) / 2;
  return [row + down + grow * r + turn * c, column + right + grow * c - turn * r];
}
