import type { PixelPoint } from '../analysis/report';
import type { Box } from '../image/raster';

/**
 * Smallest upright box around an outline.
 *
 * @param outline - At least one point.
 * @returns Box in photo pixels, not rounded.
 */
export function stoneBox(outline: readonly PixelPoint[]): Box {
  const rows = outline.map(([row]) => row);
  const columns = outline.map(([, column]) => column);
  const [row, column] = [Math.min(...rows), Math.min(...columns)];
  return { row, column, width: Math.max(...columns) - column, height: Math.max(...rows) - row };
}
