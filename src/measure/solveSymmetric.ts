/**
 * Solves A·x = b for a symmetric positive definite A by Cholesky factorization.
 *
 * @param matrix - A, n × n, row-major; only the lower triangle is read.
 * @param right - b, n values.
 * @returns x, n values; null when A is not positive definite.
 * @see Golub and Van Loan, Matrix Computations, 4th ed., section 4.2.
 */
export function solveSymmetric(matrix: Float64Array, right: Float64Array): Float64Array | null {
  const n = right.length;
  const lower = Float64Array.from(matrix);
  const x = Float64Array.from(right);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = lower[i * n + j]!;
      for (let k = 0; k < j; k++) sum -= lower[i * n + k]! * lower[j * n + k]!;
      if (i === j && !(sum > 0)) return null;
      lower[i * n + j] = i === j ? Math.sqrt(sum) : sum / lower[j * n + j]!;
    }
  }
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < i; k++) x[i]! -= lower[i * n + k]! * x[k]!;
    x[i]! /= lower[i * n + i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) x[i]! -= lower[k * n + i]! * x[k]!;
    x[i]! /= lower[i * n + i]!;
  }
  return x;
}
