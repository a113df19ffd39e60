import { gaussianKernel } from './blurGaussian';

/** The kernel of the last call: a fit asks for the same one again and again. */
let known: { readonly sigma: number; readonly q: number; readonly kernel: Float64Array } | null = null;
/** Means down of the rows of samples around one row of means, with `reach` more at both ends. */
let line = new Float64Array(0);

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
  if (line.length !== columns + 2 * reach) line = new Float64Array(columns + 2 * reach);
  const inner = line.subarray(reach, reach + columns);
  for (let y = 0; y < height; y++) {
    meansDown(fine, columns, rows, y * q - reach, kernel, inner);
    line.fill(inner[0]!, 0, reach);
    line.fill(inner[columns - 1]!, reach + columns);
    meansAcross(line, kernel, q, into, y * width, width);
  }
  return into;
}

/** Weighted sums of as many rows as the kernel is long, from `first` on; four at a time, as one pass costs the most. */
function meansDown(
  fine: Float64Array,
  columns: number,
  rows: number,
  first: number,
  kernel: Float64Array,
  into: Float64Array,
): void {
  const start = (j: number) => columns * Math.min(rows - 1, Math.max(0, first + j));
  const weight = (j: number) => kernel[j] ?? 0;
  for (let j = 0; j < kernel.length; j += 4) {
    const a = start(j);
    const b = start(j + 1);
    const c = start(j + 2);
    const d = start(j + 3);
    const wa = weight(j);
    const wb = weight(j + 1);
    const wc = weight(j + 2);
    const wd = weight(j + 3);
    for (let x = 0; x < columns; x++) {
      const sum = wa * fine[a + x]! + wb * fine[b + x]! + (wc * fine[c + x]! + wd * fine[d + x]!);
      into[x] = j === 0 ? sum : into[x]! + sum;
    }
  }
}

/** The kernel is the same from both ends, so each weight serves two samples. */
function meansAcross(
  line: Float64Array,
  kernel: Float64Array,
  q: number,
  into: Float64Array,
  to: number,
  count: number,
): void {
  const last = kernel.length - 1;
  const half = kernel.length >> 1;
  const isOdd = kernel.length % 2 === 1;
  for (let x = 0; x < count; x++) {
    const from = x * q;
    let sum = isOdd ? kernel[half]! * line[from + half]! : 0;
    for (let j = 0; j < half; j++) sum += kernel[j]! * (line[from + j]! + line[from + last - j]!);
    into[to + x] = sum;
  }
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
