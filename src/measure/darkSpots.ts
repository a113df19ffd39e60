import type { Mask } from '../image/raster';
import { medianOver } from './medianOver';
import type { Blur, StoneSurface } from './stoneSurface';

/** A place that is darker than all around it. */
export interface DarkSpot {
  readonly row: number;
  readonly column: number;
  /** Radius of the disc that answers alike, pixels. */
  readonly radiusPx: number;
  /** How much darker than its surroundings, ln units, > 0. */
  readonly response: number;
  /** The same in units of the stone's own detail of that size. */
  readonly score: number;
}

/** Smallest radius looked for, mm, and how many sizes: from the smallest pit worth naming to what shows of a chip. */
const SMALLEST_MM = 0.22;
const SIZES = 6;
/** Each size is this many times the one before; so is the wider of the two Gaussians whose difference finds it. */
const STEP = Math.SQRT2;
/** A Laplacian of Gaussian answers most to a disc of √2 of its standard deviation (Lindeberg 1998). */
const RADIUS_IN_SIGMAS = Math.SQRT2;
/** Weakest spot looked at: ln units, and times the stone's usual detail. */
const LEAST = { response: 0.025, score: 1.2 };
/** Narrowest Gaussian that the pixels carry, pixels. */
const LEAST_SIGMA_PX = 0.8;

/**
 * Finds dark spots of every size: local extrema of a difference of Gaussians in place and size.
 *
 * @param surface - The stone.
 * @param blur - Gaussian blur.
 * @returns Spots, darkest first.
 */
export function darkSpots(surface: StoneSurface, blur: Blur): DarkSpot[] {
  const { inner } = surface;
  const layers = layersOf(surface, blur);
  const spots: DarkSpot[] = [];
  layers.forEach((layer, k) => {
    const beside = [layers[k - 1]?.response, layers[k + 1]?.response];
    for (const i of peaksOf(layer.response, inner)) {
      const response = layer.response[i]!;
      const score = response / Math.max(1e-4, layer.usual);
      if (response < LEAST.response || score < LEAST.score) continue;
      if (beside.some((other) => other && isBelowAny(response, other, i, inner))) continue;
      const row = Math.floor(i / inner.width);
      spots.push({ row, column: i - row * inner.width, radiusPx: layer.radiusPx, response, score });
    }
  });
  return spots.sort((a, b) => b.response - a.response);
}

interface Layer {
  readonly radiusPx: number;
  readonly response: Float32Array;
  /** Usual size of the response on this stone. */
  readonly usual: number;
}

/** Differences of Gaussians, one for each size that the pixels carry (Marr and Hildreth 1980). */
function layersOf({ colorless, inner, mmPerPx }: StoneSurface, blur: Blur): Layer[] {
  const radii = Array.from({ length: SIZES + 1 }, (_, k) => (SMALLEST_MM * STEP ** k) / mmPerPx).filter(
    (radiusPx) => radiusPx / RADIUS_IN_SIGMAS >= LEAST_SIGMA_PX,
  );
  const means: Float32Array[] = [];
  let mean = colorless;
  let sigma = 0;
  for (const radiusPx of radii) {
    const wanted = radiusPx / RADIUS_IN_SIGMAS;
    mean = blur(mean, Math.sqrt(wanted ** 2 - sigma ** 2));
    sigma = wanted;
    means.push(mean.data);
  }
  return radii.slice(0, -1).map((radiusPx, k) => {
    const wider = means[k + 1]!;
    const response = means[k]!.map((value, i) => wider[i]! - value);
    // 1.48 × the median size is the standard deviation of a normal spread.
    const usual = 1.4826 * medianOver(response.map(Math.abs), inner);
    return { radiusPx, response, usual };
  });
}

function peaksOf(values: Float32Array, { width, height, data }: Mask): number[] {
  const peaks: number[] = [];
  for (let row = 1; row < height - 1; row++) {
    for (let column = 1; column < width - 1; column++) {
      const i = row * width + column;
      const value = values[i]!;
      if (!data[i] || value < LEAST.response) continue;
      if (
        value > values[i - 1]! &&
        value >= values[i + 1]! &&
        value > values[i - width]! &&
        value >= values[i + width]! &&
        value > values[i - width - 1]! &&
        value > values[i - width + 1]! &&
        value >= values[i + width - 1]! &&
        value >= values[i + width + 1]!
      )
        peaks.push(i);
    }
  }
  return peaks;
}

/** Whether a neighboring size answers more at the place or right beside it. */
function isBelowAny(value: number, other: Float32Array, i: number, { width }: Mask): boolean {
  return [0, -1, 1, -width, width].some((step) => (other[i + step] ?? 0) > value);
}
