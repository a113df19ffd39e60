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
  const line = new Float64Array(Math.max(width, height));
  for (let y = 0; y < height; y++) blurLine(values, y * width, 1, width, kernel, line);
  for (let x = 0; x < width; x++) blurLine(values, x, width, height, kernel, line);
}

/** Right half of the kernel, center first; sums to 1 over both halves. */
function gaussianKernel(sigmaPx: number): Float64Array {
  const reach = Math.max(1, Math.ceil(3.2 * sigmaPx));
  const half = Float64Array.from({ length: reach + 1 }, (_, i) =>
    Math.exp((-i * i) / (2 * sigmaPx * sigmaPx)),
  );
  let total = half[0]!;
  for (let i = 1; i <= reach; i++) total += 2 * half[i]!;
  return half.map((value) => value / total);
}

function blurLine(
  values: Float64Array,
  first: number,
  stride: number,
  length: number,
  kernel: Float64Array,
  line: Float64Array,
): void {
  for (let i = 0; i < length; i++) line[i] = values[first + i * stride]!;
  const last = length - 1;
  for (let i = 0; i < length; i++) {
    let sum = kernel[0]! * line[i]!;
    for (let k = 1; k < kernel.length; k++) {
      sum += kernel[k]! * (line[i - k < 0 ? 0 : i - k]! + line[i + k > last ? last : i + k]!);
    }
    values[first + i * stride] = sum;
  }
}
