import type { Mask } from '../image/raster';

/** At most about this many pixels are looked at: enough for a median good to a few percent. */
const MOST_SAMPLES = 6000;

/**
 * Median over a mask, from an even sample of its pixels.
 *
 * @param values - One value a pixel of the mask's picture.
 * @param mask - Pixels that count.
 * @returns The median; 0 for an empty mask.
 */
export function medianOver(values: Float32Array, mask: Mask): number {
  const count = mask.data.reduce((sum, inside) => sum + inside, 0);
  const step = Math.max(1, Math.floor(count / MOST_SAMPLES));
  const sample = new Float32Array(Math.ceil(count / step));
  let seen = 0;
  for (let i = 0; i < values.length; i++) {
    if (!mask.data[i]) continue;
    if (seen % step === 0) sample[seen / step] = values[i]!;
    seen++;
  }
  sample.sort();
  return sample[sample.length >> 1] ?? 0;
}
