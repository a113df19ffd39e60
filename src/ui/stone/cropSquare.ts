import type { PixelPoint } from '../../analysis/report';
import type { Box } from '../../image/raster';
import { stoneBox } from '../../picture/stoneBox';

/** Room around a stone in its enlarged crop, as a share of its longer side. */
const MARGIN = 0.08;

/**
 * The square part of the photo that shows one stone whole; it may reach beyond the photo's edge.
 *
 * @param outline - At least one point.
 */
export function cropSquare(outline: readonly PixelPoint[]): Box {
  const box = stoneBox(outline);
  const side = Math.max(box.width, box.height, 1) * (1 + 2 * MARGIN);
  return {
    row: box.row + box.height / 2 - side / 2,
    column: box.column + box.width / 2 - side / 2,
    width: side,
    height: side,
  };
}
