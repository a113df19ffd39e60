import type { Raster } from '../image/raster';

/** A dark patch on a stone, measured. */
export interface DarkPatch {
  /** Pixels of the patch, indices into the picture. */
  readonly pixels: readonly number[];
  readonly row: number;
  readonly column: number;
  /** Standard deviations along and across the patch's long axis, pixels. */
  readonly alongPx: number;
  readonly acrossPx: number;
  /** Mean detail in the patch less that around it, ln units; negative. */
  readonly depth: number;
  /** Mean detail past the patch on the side away from the lamp, less that around it; a pit's lit wall is bright. */
  readonly farLip: number;
  /** The same on the side toward the lamp. */
  readonly nearLip: number;
}

/**
 * Measures a dark patch and both its sides along the lamp's direction.
 *
 * A pit's wall toward the lamp lies in shadow and its far wall faces the lamp, so a bright lip follows the
 * dark on the side away from the lamp; a speck of color has none.
 *
 * @param detail - Surface with its shading taken off, ln units.
 * @param pixels - The patch; at least one pixel.
 * @param lampSide - Unit vector in the picture toward the lamp: x right, y up.
 * @returns The patch's shape and contrasts.
 */
export function pitSigns(
  detail: Raster,
  pixels: readonly number[],
  lampSide: readonly [number, number],
): DarkPatch {
  const { width } = detail;
  const rows = pixels.map((i) => Math.floor(i / width));
  const columns = pixels.map((i) => i % width);
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const row = mean(rows);
  const column = mean(columns);
  const rr = mean(rows.map((r) => (r - row) ** 2)) + 1 / 12;
  const cc = mean(columns.map((c) => (c - column) ** 2)) + 1 / 12;
  const rc = mean(rows.map((r, k) => (r - row) * (columns[k]! - column)));
  const middle = (rr + cc) / 2;
  const apart = Math.hypot((rr - cc) / 2, rc);
  const around = ringMean(detail, pixels, row, column);
  const lip = (side: 1 | -1) => shiftedMean(detail, pixels, lampSide, side) - around;
  return {
    pixels,
    row,
    column,
    alongPx: Math.sqrt(middle + apart),
    acrossPx: Math.sqrt(Math.max(1 / 12, middle - apart)),
    depth: mean(pixels.map((i) => detail.data[i]!)) - around,
    farLip: lip(-1),
    nearLip: lip(1),
  };
}

/** Median detail on a ring about twice as wide as the patch. */
function ringMean(detail: Raster, pixels: readonly number[], row: number, column: number): number {
  const radius = 1.5 + 2.2 * Math.sqrt(pixels.length / Math.PI);
  const values: number[] = [];
  for (let k = 0; k < 32; k++) {
    for (const share of [1, 1.25]) {
      const r = Math.round(row + share * radius * Math.sin((2 * Math.PI * k) / 32));
      const c = Math.round(column + share * radius * Math.cos((2 * Math.PI * k) / 32));
      if (r >= 0 && c >= 0 && r < detail.height && c < detail.width)
        values.push(detail.data[r * detail.width + c]!);
    }
  }
  values.sort((a, b) => a - b);
  return values[values.length >> 1] ?? 0;
}

/** Brightest third of the pixels that the patch covers when moved off itself along the lamp's direction. */
function shiftedMean(
  detail: Raster,
  pixels: readonly number[],
  [x, y]: readonly [number, number],
  side: 1 | -1,
): number {
  const own = new Set(pixels);
  const reach = Math.max(2, Math.round(1.3 * Math.sqrt(pixels.length / Math.PI)) + 1);
  const values: number[] = [];
  const seen = new Set<number>();
  for (const i of pixels) {
    for (let step = 1; step <= reach; step++) {
      const r = Math.round(Math.floor(i / detail.width) - side * step * y);
      const c = Math.round((i % detail.width) + side * step * x);
      if (r < 0 || c < 0 || r >= detail.height || c >= detail.width) continue;
      const j = r * detail.width + c;
      if (own.has(j) || seen.has(j)) continue;
      seen.add(j);
      values.push(detail.data[j]!);
    }
  }
  values.sort((a, b) => b - a);
  const kept = values.slice(0, Math.max(1, Math.ceil(values.length / 3)));
  return values.length === 0 ? 0 : kept.reduce((sum, value) => sum + value, 0) / kept.length;
}
