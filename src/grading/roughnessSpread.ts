/** What the lamp's image on a stone is read with. */
export interface ReadingConditions {
  /** Tangent of the radius of the disc of surface normals that mirror the lamp. */
  readonly sourceSlope: number;
  /** Standard deviation of the camera's blur on the stone, mm. */
  readonly blurMm: number;
  /** Radius of curvature of the stone, mm. */
  readonly radiusMm: number;
}

/** Spread with which the highlight's height is known, share of it: the mirror radiance comes from the ball. */
const HEIGHT_SD = 0.05;
/** Spread with which the camera's blur is known, share of it. */
const BLUR_SD = 0.25;

/**
 * Spread of the logarithm of a roughness read off a highlight, from its height and from its edge together.
 *
 * Height: f = a² / (a² + α²), so d ln f / d ln α = −2α² / (a² + α²), and an error δ of f becomes
 * δ (a² + α²) / 2α² of ln α: the larger the lamp, the blinder near a mirror.
 * Edge: its width squared is α² + (σ/R)² in slopes, blur σ on a stone of radius R, so an error β of σ becomes
 * β (σ/R)² / α²: the lamp's size does not enter. Both are independent: 1/s² = 1/s₁² + 1/s₂².
 *
 * @param alpha - GGX roughness, > 0.
 * @returns Standard deviation of ln α, > 0; falls as alpha grows.
 * @throws RangeError if alpha, the lamp's size or the stone's radius is not positive.
 */
export function roughnessSpread(alpha: number, { sourceSlope, blurMm, radiusMm }: ReadingConditions): number {
  if (!(alpha > 0 && sourceSlope > 0 && radiusMm > 0)) {
    throw new RangeError('Roughness, lamp size and stone radius must be positive.');
  }
  const byHeight = (HEIGHT_SD * (sourceSlope ** 2 + alpha ** 2)) / (2 * alpha ** 2);
  const byEdge = (BLUR_SD * (blurMm / radiusMm) ** 2) / alpha ** 2;
  return byEdge === 0 ? 0 : 1 / Math.hypot(1 / byHeight, 1 / byEdge);
}
