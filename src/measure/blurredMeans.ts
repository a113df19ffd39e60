import { gaussianKernel } from './blurGaussian';

/** The kernel of the last call: a fit asks for the same one again and again. */
let known: { readonly sigma: number; readonly q: number; readonly kernel: Float64Array } | null = null;
/** One padded row of samples, and all rows once they are blurred across. */
let line = new Float64Array(0);
let across = new Float64Array(0);

/**
 * Blurs finely sampled values by a Gaussian and averages blocks of `q` × `q` of them: what `blurGaussian` and the means
 * of blocks give, but only where a mean is wanted. The edge is repeated outward.
 *
 * @param fine - Row-major, `width * q` columns and `height * q` rows; a longer array is read at its front.
 * @param width - Means across.
 * @param height - Means down.
 * @param q - Samples along the side of a block, ≥ 1.
 * @param sigma - Standard deviation in samples; up to 0.05 nothing is blurred.
 * @param into - `width * height` means, overwritten and returned.
 */
export function blurredMeans(
  fine: Float64Array,
  width: number,
  height: number,
  q: number,
  sigma: number,
  into: Float64Array,
): Float64Array {
  const kernel = known?.sigma === sigma && known.q === q ? known.kernel : blockKernel(sigma, q);
  known = { sigma, q, kernel };
  const reach = (kernel.length - q) / 2;
  const columns = width * q;
  const rows = height * q;
  if (line.length < columns + 2 * reach) line = new Float64Array(columns + 2 * reach);
  if (across.length < rows * width) across = new Float64Array(rows * width);
  for (let row = 0; row < rows; row++) {
    const first = row * columns;
    line.fill(fine[first]!, 0, reach);
    for (let k = 0; k < columns; k++) line[reach + k] = fine[first + k]!;
    line.fill(fine[first + columns - 1]!, reach + columns, columns + 2 * reach);
    for (let x = 0; x < width; x++) {
      let sum = 0;
      for (let j = 0, from = x * q; j < kernel.length; j++, from++) sum += kernel[j]! * line[from]!;
      across[row * width + x] = sum;
    }
  }
  into.fill(0, 0, width * height);
  for (let y = 0; y < height; y++) {
    const to = y * width;
    for (let j = 0; j < kernel.length; j++) {
      const weight = kernel[j]!;
      const from = width * Math.min(rows - 1, Math.max(0, y * q + j - reach));
      for (let x = 0; x < width; x++) into[to + x]! += weight * across[from + x]!;
    }
  }
  return into;
}

/** Weights of the samples around a block in its blurred mean: the Gaussian summed over the block's samples. */
function blockKernel(sigma: number, q: number): Float64Array {
  const half = sigma <= 0.05 ? Float64Array.of(1) : gaussianKernel(sigma);
  const reach = half.length - 1;
  const kernel = new Float64Array(2 * reach + q);
  for (let i = 0; i < q; i++) {
    for (let k = -reach; k <= reach; k++) kernel[reach + i + k]! += half[Math.abs(k)]! / q;
  }
  return kernel;
}
