/** Points of the sum over half a turn; orders and arguments within the limits below come out exact to 1e-12. */
const POINTS = 64;

/**
 * Derivative J′ₘ of the Bessel function of the first kind: how much of a wave's slope across a circle falls to the
 * circle's m-th harmonic.
 *
 * A wave cos(k·x + φ) is the sum of Jₘ(kr) e^{imθ} over m (Jacobi–Anger), and its slope across the circle of radius
 * r the sum of k J′ₘ(kr) e^{imθ}.
 *
 * @param order - Harmonic m, a whole number, 0 to 12.
 * @param cycles - Circumference of the circle over the wavelength, k·r, 0 to 15.
 * @returns J′ₘ(cycles) = (1/π) ∫₀^π sin τ · sin(m τ − x sin τ) dτ.
 * @see NIST Digital Library of Mathematical Functions, 10.9.2 (Bessel's integral), 10.12.1 (Jacobi–Anger).
 */
export function waveHarmonic(order: number, cycles: number): number {
  // The integrand over a whole turn is periodic and smooth, so that the trapezoid sum converges at once.
  let sum = 0;
  for (let i = 0; i < POINTS; i++) {
    const tau = (2 * Math.PI * i) / POINTS;
    sum += Math.sin(tau) * Math.sin(order * tau - cycles * Math.sin(tau));
  }
  return sum / POINTS;
}
