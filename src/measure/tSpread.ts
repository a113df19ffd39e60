/** Spread of three channels around zero. */
export interface ChannelSpread {
  /** Rows of L⁻¹ for the covariance L·Lᵀ, row-major; entries above the diagonal are zero. */
  readonly inverse: readonly number[];
  readonly logDeterminant: number;
}

/** Variance added to each channel: rounding of an 8-bit photo and its compression, radiance². */
const NOISE = 1.5e-6;

/**
 * Scale matrix of a multivariate t distribution over three channels, and the weight of each sample in it.
 *
 * @param residuals - Three a sample, around zero; samples of three exact zeros are taken as missing.
 * @param weights - One a sample; start values on entry, the t distribution's own on return.
 * @param freedom - Degrees of freedom.
 * @returns Spread, and minus twice the logarithm of the likelihood but for a constant.
 * @see Lange, Little, Taylor 1989, J. Am. Stat. Assoc. 84, section 2.
 */
export function tSpread(
  residuals: Float64Array,
  weights: Float64Array,
  freedom: number,
): ChannelSpread & { readonly minusTwoLogLikelihood: number } {
  const present = (i: number) =>
    residuals[3 * i] !== 0 || residuals[3 * i + 1] !== 0 || residuals[3 * i + 2] !== 0;
  let spread: ChannelSpread = lowerInverse([1, 0, 0, 0, 1, 0, 0, 0, 1]);
  let count = 0;
  let logs = 0;
  for (let round = 0; round < 4; round++) {
    const covariance = new Array<number>(9).fill(0);
    count = 0;
    for (let i = 0; i < weights.length; i++) {
      if (!present(i)) continue;
      count++;
      for (let a = 0; a < 3; a++) {
        for (let b = 0; b <= a; b++) {
          covariance[3 * a + b]! += weights[i]! * residuals[3 * i + a]! * residuals[3 * i + b]!;
        }
      }
    }
    for (let k = 0; k < 9; k++) covariance[k]! /= Math.max(1, count);
    for (let a = 0; a < 3; a++) covariance[4 * a]! += NOISE;
    spread = lowerInverse(covariance);
    logs = 0;
    for (let i = 0; i < weights.length; i++) {
      if (!present(i)) {
        weights[i] = 0;
        continue;
      }
      const distance = squaredDistance(spread.inverse, residuals, 3 * i);
      weights[i] = (freedom + 3) / (freedom + distance);
      logs += Math.log1p(distance / freedom);
    }
  }
  return { ...spread, minusTwoLogLikelihood: count * spread.logDeterminant + (freedom + 3) * logs };
}

function squaredDistance(inverse: readonly number[], residuals: Float64Array, i: number): number {
  const [r, g, b] = [residuals[i]!, residuals[i + 1]!, residuals[i + 2]!];
  const x = inverse[0]! * r;
  const y = inverse[3]! * r + inverse[4]! * g;
  const z = inverse[6]! * r + inverse[7]! * g + inverse[8]! * b;
  return x * x + y * y + z * z;
}

/** L⁻¹ and log-determinant of a 3 × 3 covariance, of which the lower triangle is read. */
export function lowerInverse(covariance: readonly number[]): ChannelSpread {
  const l = new Array<number>(9).fill(0);
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = covariance[3 * i + j]!;
      for (let k = 0; k < j; k++) sum -= l[3 * i + k]! * l[3 * j + k]!;
      l[3 * i + j] = i === j ? Math.sqrt(Math.max(sum, 1e-14)) : sum / l[4 * j]!;
    }
  }
  const [a, , , b, c, , d, e, f] = l as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const inverse = [1 / a, 0, 0, -b / (a * c), 1 / c, 0, (b * e - c * d) / (a * c * f), -e / (c * f), 1 / f];
  return { inverse, logDeterminant: 2 * Math.log(a * c * f) };
}
