/** Widths of the combs' bars and gaps, mm. Source: ISO 10215 / ASTM D5767, test method B. */
export const COMB_WIDTHS_MM = [0.125, 0.25, 0.5, 1, 2] as const;

export type CombWidthMm = (typeof COMB_WIDTHS_MM)[number];

/** Focal length of the lens that images the slit on the comb, mm; from memory. Only width over focal length counts. */
const FOCAL_LENGTH_MM = 130;
/** Bars of the comb that are summed; the rest of the alternating sum is extrapolated. */
const BARS = 400;
/** Roughness in bar widths from which less than 10⁻⁵ % is left. */
const NOTHING_LEFT = 6;

/**
 * Image clarity: contrast left in the mirrored image of a fine slit, seen through a comb of bars and gaps.
 *
 * C = 100 · (M − m) / (M + m), M the light through the comb with a gap over the image's middle and m with a bar there.
 * The slit lies along the bars, so only slopes across it count. Those of GGX have the density
 * α² / (2 (α² + s²)^(3/2)), and the share beyond ±s is T(s) = 1 − s / √(α² + s²). A slope s moves the image by 2 s f,
 * so a bar of width w spans s_w = w / (2 f), and with bar and gap over the whole image
 *
 *     C = 100 · (1 − 2 Σ (−1)^k T((k + ½) s_w)),  k = 0, 1, 2 …
 *
 * The slit itself is narrower than the finest bar and does not enter. Reflectance is taken as even over the image.
 *
 * @param alpha - GGX roughness, 0 (perfect polish) or more.
 * @param combMm - Width of each bar and each gap.
 * @returns Percent: 100 for a perfect polish, falling to 0. Half is left at about α = 0.24 w / f, which is 0.0037
 *   for the coarsest comb: this tells mirrors apart and nothing else.
 * @throws RangeError if alpha is negative.
 * @see ISO 10215 and ASTM D5767, test method B; the sum equals the comb's Fourier series with the lobe's transfer
 *   function z K₁(z), against which tests/golden/glossIntegral.json checks it.
 */
export function imageClarity(alpha: number, combMm: CombWidthMm): number {
  if (!(alpha >= 0)) throw new RangeError(`The roughness must be 0 or more, not ${alpha}.`);
  const inBars = alpha / (combMm / (2 * FOCAL_LENGTH_MM));
  if (inBars > NOTHING_LEFT) return 0;
  let sum = 0;
  let lastSum = 0;
  let sumBefore = 0;
  for (let k = 0; k < BARS; k++) {
    const place = k + 0.5;
    const beyond = 1 - place / Math.sqrt(inBars * inBars + place * place);
    [sumBefore, lastSum] = [lastSum, sum];
    sum += k % 2 === 0 ? beyond : -beyond;
  }
  // Means of neighboring partial sums of an alternating series lie close to its limit.
  const limit = (sum + 2 * lastSum + sumBefore) / 4;
  return Math.min(100, Math.max(0, 100 * (1 - 2 * limit)));
}
