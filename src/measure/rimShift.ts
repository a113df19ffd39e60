import { fresnelReflectance } from '../optics/fresnelReflectance';

/** Samples per pixel of the simulated profile. */
const FINE = 16;

/**
 * How far inside a glass ball's true rim the blurred picture rises most steeply.
 *
 * Toward the rim glass mirrors ever more of the tray (Fresnel), so the picture already brightens inside it.
 * The radial profile is drawn with the tray mirrored at its own radiance, blurred, and searched.
 *
 * @param radiusPx - Radius of the ball, pixels, > 3.
 * @param blurPx - Standard deviation of the camera's point spread, pixels, > 0.
 * @param n - Refractive index of the ball.
 * @returns Pixels from the steepest rise out to the rim, ≥ 0.
 */
export function rimShift(radiusPx: number, blurPx: number, n: number): number {
  const reachPx = 4 * blurPx + 3;
  const count = Math.ceil(2 * reachPx * FINE);
  const profile = Array.from({ length: count }, (_, i) => {
    const share = (radiusPx - reachPx + i / FINE) / radiusPx;
    return share >= 1 ? 1 : fresnelReflectance(n, Math.sqrt(1 - share * share));
  });
  // The slope of a blurred profile is the profile convolved with the Gaussian's derivative.
  let steepest = 0;
  let at = count / 2;
  const half = Math.ceil(3.5 * blurPx * FINE);
  for (let i = half; i < count - half; i++) {
    let slope = 0;
    for (let k = 1; k <= half; k++) {
      const x = k / FINE / blurPx;
      slope += (profile[i + k]! - profile[i - k]!) * x * Math.exp((-x * x) / 2);
    }
    if (slope > steepest) {
      steepest = slope;
      at = i;
    }
  }
  return Math.max(0, reachPx - at / FINE);
}
