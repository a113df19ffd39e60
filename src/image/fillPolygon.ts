import type { Mask } from './raster';

/**
 * Pixels whose centers lie inside a polygon (even-odd rule).
 *
 * @param polygon - Corners as row and column; closed by itself.
 * @param width - Columns of the mask.
 * @param height - Rows of the mask.
 * @returns The mask; empty for fewer than three corners.
 */
export function fillPolygon(
  polygon: readonly (readonly [number, number])[],
  width: number,
  height: number,
): Mask {
  const data = new Uint8Array(width * height);
  if (polygon.length < 3) return { width, height, data };
  crossingsByRow(polygon, height).forEach((crossings, row) => {
    crossings.sort((a, b) => a - b);
    for (let k = 0; k + 1 < crossings.length; k += 2) {
      const from = Math.max(0, Math.ceil(crossings[k]!));
      const to = Math.min(width - 1, Math.floor(crossings[k + 1]!));
      if (to >= from) data.fill(1, row * width + from, row * width + to + 1);
    }
  });
  return { width, height, data };
}

/** Columns at which the polygon's sides cross each row's middle. */
function crossingsByRow(polygon: readonly (readonly [number, number])[], height: number): number[][] {
  const rows: number[][] = Array.from({ length: height }, () => []);
  let [r0, c0] = polygon[polygon.length - 1]!;
  for (const [r1, c1] of polygon) {
    const end = Math.min(height, Math.ceil(Math.max(r0, r1)));
    for (let row = Math.max(0, Math.ceil(Math.min(r0, r1))); row < end; row++) {
      rows[row]!.push(c0 + ((row - r0) / (r1 - r0)) * (c1 - c0));
    }
    [r0, c0] = [r1, c1];
  }
  return rows;
}
