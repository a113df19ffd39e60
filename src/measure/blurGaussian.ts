/**
 * Convolves a small picture with a normalized Gaussian, in place; the edge pixels are repeated outward.
 *
 * @param values - Row-major picture, `width * height` values, overwritten.
 * @param width - Columns.
 * @param height - Rows.
 * @param sigmaPx - Standard deviation, pixels; 0 leaves the picture as it is.
 */
export function blurGaussian(values: Float64Array, width: number, height: number, sigmaPx: number): void {
  if (sigmaPx <= 0.05) return;
  const kernel = gaussianKernel(sigmaPx);
  blurAcross(values, width, height, kernel);
  blurDown(values, width, height, kernel);
}

/** Right half of a Gaussian's kernel, center first; sums to 1 over both halves. */
export function gaussianKernel(sigmaPx: number): Float64Array {
  const reach = Math.max(1, Math.ceil(3.2 * sigmaPx));
  const half = Float64Array.from({ length: reach + 1 }, (_, i) =>
    Math.exp((-i * i) / (2 * sigmaPx * sigmaPx)),
  );
  let total = half[0]!;
  for (let i = 1; i <= reach; i++) total += 2 * half[i]!;
  return half.map((value) => value / total);
}

function blurAcross(values: Float64Array, width: number, height: number, kernel: Float64Array): void {
  const reach = kernel.length - 1;
  const line = new Float64Array(width + 2 * reach);
  for (let y = 0; y < height; y++) {
    const first = y * width;
    line.fill(values[first]!, 0, reach);
    line.set(values.subarray(first, first + width), reach);
    line.fill(values[first + width - 1]!, reach + width);
    for (let x = 0; x < width; x++) {
      const at = x + reach;
      let sum = kernel[0]! * line[at]!;
      for (let k = 1; k <= reach; k++) sum += kernel[k]! * (line[at - k]! + line[at + k]!);
      values[first + x] = sum;
    }
  }
}

/** Row by row, so that memory is read in its order. */
function blurDown(values: Float64Array, width: number, height: number, kernel: Float64Array): void {
  const source = Float64Array.from(values.subarray(0, width * height));
  for (let y = 0; y < height; y++) {
    const to = y * width;
    for (let x = 0; x < width; x++) values[to + x] = kernel[0]! * source[to + x]!;
    for (let k = 1; k < kernel.length; k++) {
      const up = Math.max(0, y - k) * width;
      const down = Math.min(height - 1, y + k) * width;
      const weight = kernel[k]!;
      for (let x = 0; x < width; x++) values[to + x]! += weight * (source[up + x]! + source[down + x]!);
    }
  }
}
