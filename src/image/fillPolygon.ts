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
  for (let row = 0; row < height; row++) {
    const crossings: number[] = [];
    polygon.forEach(([r1, c1], i) => {
      const [r0, c0] = polygon[(i + polygon.length - 1) % polygon.length]!;
      if (r0 > row !== r1 > row) crossings.push(c0 + ((row - r0) / (r1 - r0)) * (c1 - c0));
    });
    crossings.sort((a, b) => a - b);
    for (let k = 0; k + 1 < crossings.length; k += 2) {
      const from = Math.max(0, Math.ceil(crossings[k]!));
      const to = Math.min(width - 1, Math.floor(crossings[k + 1]!));
      if (to >= from) data.fill(1, row * width + from, row * width + to + 1);
    }
  }
  return { width, height, data };
}
