import { nthSmallest } from '../image/nthSmallest';
import type { Raster } from '../image/raster';
import type { TrayDifference } from './trayDifference';

/** Color edges count this many times as much as edges of light: shadows and grain make few of them. */
const COLOR_WEIGHT = 3;

/** The tray's grain is read at this quantile, which lies on the tray even when stones fill most of the picture. */
const GRAIN_QUANTILE = 0.1;
/** Median over that quantile for gradients of noise (Rayleigh distribution, √(ln 2 / −ln 0.9)), and a little more, since compression evens out. */
const MEDIAN_OVER_QUANTILE = 1.15 * Math.sqrt(Math.log(2) / -Math.log(1 - GRAIN_QUANTILE));
/** Where the quantile is nothing, as in a clipped, black or strongly compressed picture: least share of the median. */
const LEAST_SHARE = 0.6;

/** Every so many pixels are plenty for a quantile; not a divisor of usual widths. */
const SAMPLE_STEP = 7;

/**
 * Edge strength that the tray's grain alone makes.
 *
 * @param edges - Of the whole picture.
 * @returns Median over the bare tray, ln units per pixel, > 0.
 */
export function grainEdge(edges: Raster): number {
  const some = new Float32Array(Math.ceil(edges.data.length / SAMPLE_STEP));
  for (let k = 0; k < some.length; k++) some[k] = edges.data[k * SAMPLE_STEP]!;
  const quantile = nthSmallest(some, Math.floor(GRAIN_QUANTILE * some.length)) ?? 0;
  const median = nthSmallest(some, some.length >> 1) ?? 0;
  return Math.max(MEDIAN_OVER_QUANTILE * quantile, LEAST_SHARE * median, 1e-5);
}

/**
 * Strength of edges in light and color: low on even surfaces and in soft shadows, high along outlines.
 *
 * @param difference - Departures from the tray.
 * @param colorWeight - How much edges of color count beside those of light; 0 leaves them out.
 * @returns One channel, ln units per pixel, ≥ 0.
 */
export function edgeRelief(difference: TrayDifference, colorWeight = COLOR_WEIGHT): Raster {
  const { width, height, lightness, redGreen, blueGreen } = difference;
  const data = new Float32Array(width * height);
  const weight = colorWeight ** 2;
  for (let y = 0, i = 0; y < height; y++) {
    const up = y > 0 ? -width : 0;
    const down = y < height - 1 ? width : 0;
    for (let x = 0; x < width; x++, i++) {
      const left = x > 0 ? i - 1 : i;
      const right = x < width - 1 ? i + 1 : i;
      const light = squared(lightness, left, right, i + up, i + down);
      if (weight === 0) {
        data[i] = Math.sqrt(light) / 2;
        continue;
      }
      const red = squared(redGreen, left, right, i + up, i + down);
      const blue = squared(blueGreen, left, right, i + up, i + down);
      data[i] = Math.sqrt(light + weight * (red + blue)) / 2;
    }
  }
  return { width, height, channels: 1, data };
}

/** Square of a field's rise from left to right and from above to below. */
function squared(field: Float32Array, left: number, right: number, above: number, below: number): number {
  const across = field[right]! - field[left]!;
  const down = field[below]! - field[above]!;
  return across * across + down * down;
}
