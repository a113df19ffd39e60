import { blurGaussian } from './blurGaussian';
import { samplePixel } from './samplePixel';

/** Pixels per standard deviation that are enough for a smooth result. */
const ENOUGH = 4;

/**
 * Convolves a one-channel picture with a wide Gaussian, on a coarse grid of block means.
 *
 * @param values - Row-major picture, `width * height` values.
 * @param width - Columns.
 * @param height - Rows.
 * @param sigmaPx - Standard deviation, pixels; up to 8 nothing is coarsened.
 * @returns A new picture of equal size; within about a hundredth of the exact one's range.
 */
export function blurWide(
  values: ArrayLike<number>,
  width: number,
  height: number,
  sigmaPx: number,
): Float32Array {
  const block = Math.max(1, Math.floor(sigmaPx / ENOUGH));
  if (block === 1) {
    const exact = Float64Array.from(values);
    blurGaussian(exact, width, height, sigmaPx);
    return Float32Array.from(exact);
  }
  const across = Math.ceil(width / block);
  const down = Math.ceil(height / block);
  const sums = new Float64Array(across * down);
  const counts = new Float64Array(across * down);
  for (let row = 0, i = 0; row < height; row++) {
    const first = Math.floor(row / block) * across;
    for (let column = 0; column < width; column++, i++) {
      const k = first + Math.floor(column / block);
      sums[k]! += values[i]!;
      counts[k]!++;
    }
  }
  const means = sums.map((sum, k) => sum / counts[k]!);
  blurGaussian(means, across, down, sigmaPx / block);
  const coarse = { width: across, height: down, channels: 1, data: Float32Array.from(means) } as const;
  const at = (fine: number) => (fine + 0.5) / block - 0.5;
  const blurred = new Float32Array(width * height);
  for (let row = 0, i = 0; row < height; row++) {
    for (let column = 0; column < width; column++, i++) blurred[i] = samplePixel(coarse, at(row), at(column));
  }
  return blurred;
}
