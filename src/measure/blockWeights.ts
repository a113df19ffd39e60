/** Those of the last call: a fit asks for the same again and again. */
let known: { readonly sigma: number; readonly q: number; readonly weights: Float64Array } | null = null;

/**
 * Weights of the samples around a block of `q` in its mean after a Gaussian blur: the Gaussian summed over the block's
 * samples; along one side, the other's are the same.
 *
 * @param sigma - Standard deviation, samples; up to 0.05 nothing is blurred.
 * @param q - Samples along the side of a block, ≥ 1.
 * @returns q + 2 · reach weights, the same from both ends; they sum to 1.
 */
export function blockWeights(sigma: number, q: number): Float64Array {
  if (known?.sigma === sigma && known.q === q) return known.weights;
  const half = sigma <= 0.05 ? Float64Array.of(1) : gaussianKernel(sigma);
  const reach = half.length - 1;
  const weights = new Float64Array(2 * reach + q);
  for (let i = 0; i < q; i++) {
    for (let k = -reach; k <= reach; k++) weights[reach + i + k]! += half[Math.abs(k)]! / q;
  }
  known = { sigma, q, weights };
  return weights;
}

/** Right half of a Gaussian's kernel, center first; sums to 1 over both halves. */
function gaussianKernel(sigmaPx: number): Float64Array {
  const reach = Math.max(1, Math.ceil(3.2 * sigmaPx));
  const half = Float64Array.from({ length: reach + 1 }, (_, i) =>
    Math.exp((-i * i) / (2 * sigmaPx * sigmaPx)),
  );
  let total = half[0]!;
  for (let i = 1; i <= reach; i++) total += 2 * half[i]!;
  return half.map((value) => value / total);
}
