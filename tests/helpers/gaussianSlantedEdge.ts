import type { EdgeRegion } from '../../src/optics/edgeLine';

export interface SyntheticEdge {
  readonly width: number;
  readonly height: number;
  /** Tilt, degrees; positive moves the edge to the right on its way down. */
  readonly angleDeg: number;
  /** Standard deviation of the blur at right angles to the edge, pixels. */
  readonly sigmaPx: number;
  readonly left: number;
  readonly right: number;
}

/** Draws a straight edge through the region's center, blurred by a Gaussian and sampled at pixel centers. */
export function gaussianSlantedEdge(edge: SyntheticEdge): EdgeRegion {
  const { width, height, sigmaPx, left, right } = edge;
  const angle = (edge.angleDeg * Math.PI) / 180;
  const data = new Float64Array(width * height);
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      const across =
        (column - (width - 1) / 2) * Math.cos(angle) - (row - (height - 1) / 2) * Math.sin(angle);
      data[row * width + column] = left + (right - left) * cumulativeNormal(across / sigmaPx);
    }
  }
  return { width, height, data };
}

/** Φ(z) by Simpson's rule on the density, to about 1e-9. */
function cumulativeNormal(z: number): number {
  if (Math.abs(z) > 8) return z > 0 ? 1 : 0;
  const steps = 64;
  let sum = 0;
  for (let step = 0; step <= steps; step++) {
    const weight = step === 0 || step === steps ? 1 : step % 2 === 1 ? 4 : 2;
    sum += weight * Math.exp(-(((z * step) / steps) ** 2) / 2);
  }
  return 0.5 + ((z / steps / 3) * sum) / Math.sqrt(2 * Math.PI);
}
