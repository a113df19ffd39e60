import type { Mask } from '../image/raster';

/** Silhouette of a stone as the ellipse of equal second moments. */
export interface Silhouette {
  readonly row: number;
  readonly column: number;
  /** Radius of the disc of equal area, pixels. */
  readonly radiusPx: number;
  /** Inverse of the ellipse's matrix S, per pixel²: ρ² = pᵀS⁻¹p is 1 on its rim; x right, y up. */
  readonly inverse: readonly [xx: number, xy: number, yy: number];
}

/** How a stone rises inside its silhouette. */
export interface Relief {
  /** Height over the radius of the silhouette. */
  readonly heightShare: number;
  /** Slope of the equator: how much higher it lies toward x and toward y. */
  readonly tilt: readonly [number, number];
  /** Exponent of the dome z = height · √(1 − ρᵏ); 2 for an ellipsoid, more for a flat top. */
  readonly flatness: number;
}

/** Ellipse with the second moments of a mask; a uniform ellipse has a quarter of S. */
export function silhouetteOf(mask: Mask): Silhouette {
  let count = 0;
  const sums = [0, 0, 0, 0, 0];
  mask.data.forEach((inside, i) => {
    if (!inside) return;
    const row = Math.floor(i / mask.width);
    const column = i % mask.width;
    count++;
    [row, column, row * row, column * column, row * column].forEach((value, k) => {
      sums[k]! += value;
    });
  });
  const [row, column, rr, cc, rc] = sums.map((sum) => sum / Math.max(1, count)) as [
    number,
    number,
    number,
    number,
    number,
  ];
  const sxx = 4 * (cc - column * column) + 0.3;
  const syy = 4 * (rr - row * row) + 0.3;
  const sxy = -4 * (rc - row * column);
  const determinant = sxx * syy - sxy * sxy;
  return {
    row,
    column,
    radiusPx: Math.sqrt(count / Math.PI),
    inverse: [syy / determinant, -sxy / determinant, sxx / determinant],
  };
}

/**
 * Slope of the dome at a place: (∂z/∂x, ∂z/∂y) negated, so that the normal is (right, up, 1) before normalizing.
 *
 * z = t·p + h·R·√(1 − ρᵏ); shearing by t keeps the silhouette.
 *
 * @returns null outside ρ = 0.97, where the dome is too steep to know.
 */
export function domeSlope(
  { radiusPx, inverse }: Silhouette,
  { heightShare, tilt, flatness }: Relief,
  x: number,
  y: number,
): readonly [right: number, up: number] | null {
  const ax = inverse[0] * x + inverse[1] * y;
  const ay = inverse[1] * x + inverse[2] * y;
  const rho2 = x * ax + y * ay;
  if (rho2 > 0.94) return null;
  const rho = Math.sqrt(Math.max(rho2, 1e-9));
  const steep =
    (heightShare * radiusPx * flatness * rho ** (flatness - 2)) / (2 * Math.sqrt(1 - rho ** flatness));
  return [steep * ax - tilt[0], steep * ay - tilt[1]];
}
