import { lobeShare } from '../optics/lobeShare';

/**
 * Slope at which the highlight of a round lamp falls to half its height.
 *
 * @param alpha - GGX roughness, > 0.
 * @param sourceSlope - Half-vector radius of the lamp, > 0.
 * @returns Slope, > 0; the lamp's own radius for a mirror, 0.64 α for a lamp much smaller than the lobe.
 */
export function lobeHalfWidth(alpha: number, sourceSlope: number): number {
  const ratio = alpha / sourceSlope;
  const half = 0.5 * lobeShare(0, ratio);
  let low = 0;
  let high = 1 + 2 * ratio;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (lobeShare(middle, ratio) > half) low = middle;
    else high = middle;
  }
  return low * sourceSlope;
}
