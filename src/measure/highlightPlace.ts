import type { Mask } from '../image/raster';
import type { Vector } from '../optics/vector';

/** Where on a stone the lamp's image is expected. */
export interface HighlightPlace {
  readonly row: number;
  readonly column: number;
  /** Radius of the disc of equal area, pixels. */
  readonly radiusPx: number;
}

/** Half-height of a tumbled stone lying on its flat side, in shares of its radius seen from above. */
const HEIGHT_SHARE = 0.75;

/**
 * Expects the lamp's image where an ellipsoid with the stone's silhouette faces halfway between lamp and camera.
 *
 * On the ellipsoid xᵀS⁻¹x = 1 the normal is h at x = S·h / √(hᵀS·h). The silhouette's second moments are a
 * quarter of S.
 *
 * @param mask - The stone; not empty.
 * @param half - Unit vector halfway between lamp and camera: x right, y up, z to the camera.
 * @returns Place in pixels of the mask.
 */
export function highlightPlace(mask: Mask, half: Vector): HighlightPlace {
  let count = 0;
  const sums: [number, number, number, number, number] = [0, 0, 0, 0, 0];
  for (let row = 0, i = 0; row < mask.height; row++) {
    for (let column = 0; column < mask.width; column++, i++) {
      if (!mask.data[i]) continue;
      count++;
      sums[0] += row;
      sums[1] += column;
      sums[2] += row * row;
      sums[3] += column * column;
      sums[4] += row * column;
    }
  }
  const [row, column, rr, cc, rc] = sums.map((sum) => sum / Math.max(1, count)) as [
    number,
    number,
    number,
    number,
    number,
  ];
  const radiusPx = Math.sqrt(count / Math.PI);
  const sxx = 4 * (cc - column * column);
  const syy = 4 * (rr - row * row);
  // Rows run down, y runs up.
  const sxy = -4 * (rc - row * column);
  const [hx, hy, hz] = half;
  const along = [sxx * hx + sxy * hy, sxy * hx + syy * hy] as const;
  const reach = Math.sqrt(hx * along[0] + hy * along[1] + (HEIGHT_SHARE * radiusPx * hz) ** 2);
  return { row: row - along[1] / reach, column: column + along[0] / reach, radiusPx };
}
