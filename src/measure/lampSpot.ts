import type { Raster } from '../image/raster';
import type { Circle } from './circleFit';

/** The bright middle of a ball, before the lamp's image is fitted to it. */
export interface LampSpot {
  readonly row: number;
  readonly column: number;
  readonly peak: number;
  readonly floor: number;
  readonly radiusPx: number;
}

/**
 * Finds the brightest spot inside a ball's circle.
 *
 * @param light - One-channel radiance.
 * @param ball - The circle in it.
 * @returns Place, pixels; light at its peak and of the ball around; null when nothing stands out of the dark glass.
 */
export function lampSpot(light: Raster, ball: Circle): LampSpot | null {
  const { width, data } = light;
  const inside: number[] = [];
  const reach2 = (0.8 * ball.radiusPx) ** 2;
  for (let row = 0; row < light.height; row++) {
    for (let column = 0; column < width; column++) {
      const apart2 = (row - ball.row) ** 2 + (column - ball.column) ** 2;
      if (apart2 <= reach2) inside.push(row * width + column);
    }
  }
  if (inside.length < 30) return null;
  const sorted = Float32Array.from(inside, (i) => data[i]!).sort();
  const peak = sorted[sorted.length - 1]!;
  const floor = sorted[(sorted.length - 1) >> 1]!;
  const top = inside.find((i) => data[i] === peak)!;
  const level = floor + 0.5 * (peak - floor);
  const near2 = (0.4 * ball.radiusPx) ** 2;
  const rowOf = (i: number) => Math.floor(i / width);
  const isNear = (i: number) => (rowOf(i) - rowOf(top)) ** 2 + ((i % width) - (top % width)) ** 2 < near2;
  const bright = inside.filter((i) => data[i]! > level && isNear(i));
  if (peak < 3 * floor + 0.01 || bright.length < 3) return null;
  const mean = (of: (i: number) => number) => bright.reduce((sum, i) => sum + of(i), 0) / bright.length;
  const radiusPx = Math.sqrt(bright.length / Math.PI);
  return { row: mean(rowOf), column: mean((i) => i % width), peak, floor, radiusPx };
}
