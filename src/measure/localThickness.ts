import type { Raster } from '../image/raster';

/** The discs are drawn on a grid this many times as coarse. */
const STEP = 4;

/**
 * Radius of the largest disc inside a shape that covers a place.
 *
 * @param depth - Distance of each pixel to the shape's edge, pixels; 0 outside.
 * @returns Function of row and column, pixels; to within a few pixels.
 * @see Hildebrand and Rüegsegger 1997, Journal of Microscopy 185(1).
 */
export function localThickness(depth: Raster): (row: number, column: number) => number {
  const width = Math.ceil(depth.width / STEP);
  const height = Math.ceil(depth.height / STEP);
  const thickness = new Float32Array(width * height);
  const at = (y: number, x: number) => depth.data[y * STEP * depth.width + x * STEP] ?? 0;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const radius = at(y, x);
      const isRidge = radius > 0 && radius + STEP >= Math.max(...around(at, y, x, width, height));
      if (isRidge && radius > thickness[y * width + x]!) drawDisc(thickness, width, height, y, x, radius);
    }
  }
  return (row, column) => thickness[Math.floor(row / STEP) * width + Math.floor(column / STEP)]!;
}

function around(
  at: (y: number, x: number) => number,
  y: number,
  x: number,
  width: number,
  height: number,
): number[] {
  return [y > 0 ? at(y - 1, x) : 0, x > 0 ? at(y, x - 1) : 0].concat(
    y + 1 < height ? at(y + 1, x) : 0,
    x + 1 < width ? at(y, x + 1) : 0,
  );
}

function drawDisc(
  into: Float32Array,
  width: number,
  height: number,
  y: number,
  x: number,
  radius: number,
): void {
  const reach = Math.floor(radius / STEP);
  for (let dy = -Math.min(reach, y); dy <= Math.min(reach, height - 1 - y); dy++) {
    const half = Math.floor(Math.sqrt(Math.max(0, (radius / STEP) ** 2 - dy * dy)));
    const row = (y + dy) * width;
    for (let column = Math.max(0, x - half); column <= Math.min(width - 1, x + half); column++) {
      if (into[row + column]! < radius) into[row + column] = radius;
    }
  }
}
