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
  silhouette: Silhouette,
  relief: Relief,
  x: number,
  y: number,
): readonly [right: number, up: number] | null {
  const [xx, xy, yy] = silhouette.inverse;
  const steep = domeSteepness(silhouette, relief, x, y);
  if (steep < 0) return null;
  return [steep * (xx * x + xy * y) - relief.tilt[0], steep * (xy * x + yy * y) - relief.tilt[1]];
}

/**
 * How much of S⁻¹p is the dome's slope at a place, the tilt left out.
 *
 * @returns Pixels, ≥ 0; −1 outside ρ = 0.97, where the dome is too steep to know.
 */
export function domeSteepness(
  { radiusPx, inverse }: Silhouette,
  { heightShare, flatness }: Relief,
  x: number,
  y: number,
): number {
  const rho2 = x * (inverse[0] * x + inverse[1] * y) + y * (inverse[1] * x + inverse[2] * y);
  if (rho2 > 0.94) return -1;
  const squared = Math.max(rho2, 1e-9);
  const bend = squared ** (flatness / 2 - 1);
  return (heightShare * radiusPx * flatness * bend) / (2 * Math.sqrt(1 - bend * squared));
}
