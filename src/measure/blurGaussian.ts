import { blockMeans } from '../kernels/blockMeans';
import { blockWeights } from './blockWeights';

/**
 * Convolves a picture with a normalized Gaussian, in place, in 32-bit floats; the edge pixels are repeated outward.
 *
 * @param values - Row-major picture, `width * height` values, overwritten.
 * @param width - Columns.
 * @param height - Rows.
 * @param sigmaPx - Standard deviation, pixels; up to 0.05 the picture is left as it is.
 */
export function blurGaussian(values: Float64Array, width: number, height: number, sigmaPx: number): void {
  if (sigmaPx <= 0.05) return;
  blockMeans(values, { width, height, q: 1 }, blockWeights(sigmaPx, 1), values);
}
