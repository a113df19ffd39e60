import type { Raster } from '../image/raster';
import { samplePixel } from './samplePixel';

export interface PatchShift {
  readonly down: number;
  readonly right: number;
}

const ROUNDS = 20;
const ENOUGH_PX = 0.003;
/** Light that is neither noise nor near the camera's limit. */
const SOUND = { from: 0.003, to: 0.9 };
/** Least curvature of the misfit, per pixel of the patch, without which a direction is not fixed. */
const LEAST_TEXTURE = 2e-5;

/**
 * Shift between two small pictures of the same place to a fraction of a pixel; brightness may differ by a factor.
 *
 * @param a - One channel, linear light.
 * @param b - The other picture, larger on every side by `margin`.
 * @param margin - Pixels; the shift found stays below it.
 * @returns Pixels by which the content lies farther down and right in `b`; null when the patch does not fix it.
 * @see Lucas & Kanade 1981, on logarithms and with a free offset.
 */
export function patchShift(a: Raster, b: Raster, margin: number): PatchShift | null {
  const from = logOf(a);
  const to = logOf(b);
  const slope = (row: number, column: number) => {
    const at = row * a.width + column;
    const down = (from.data[at + a.width]! - from.data[at - a.width]!) / 2;
    const right = (from.data[at + 1]! - from.data[at - 1]!) / 2;
    return { down, right, here: from.data[at]! };
  };
  let [down, right] = [0, 0];
  for (let round = 0; round < ROUNDS; round++) {
    const sums = { n: 0, d: 0, r: 0, e: 0, dd: 0, dr: 0, rr: 0, de: 0, re: 0 };
    for (let row = 1; row < a.height - 1; row++) {
      for (let column = 1; column < a.width - 1; column++) {
        const g = slope(row, column);
        const error = samplePixel(to, row + margin + down, column + margin + right) - g.here;
        if (Number.isNaN(error + g.down + g.right)) continue;
        sums.n++;
        sums.d += g.down;
        sums.r += g.right;
        sums.e += error;
        sums.dd += g.down * g.down;
        sums.dr += g.down * g.right;
        sums.rr += g.right * g.right;
        sums.de += g.down * error;
        sums.re += g.right * error;
      }
    }
    const step = stepOf(sums, a.width * a.height);
    if (!step) return null;
    down -= step.down;
    right -= step.right;
    if (Math.max(Math.abs(down), Math.abs(right)) >= margin - 1) return null;
    if (Math.hypot(step.down, step.right) < ENOUGH_PX) break;
  }
  return { down, right };
}

/** Solves the two normal equations with the offset of brightness taken out. */
function stepOf(
  {
    n,
    d,
    r,
    e,
    dd,
    dr,
    rr,
    de,
    re,
  }: Readonly<Record<'n' | 'd' | 'r' | 'e' | 'dd' | 'dr' | 'rr' | 'de' | 're', number>>,
  pixels: number,
): PatchShift | null {
  if (n < pixels / 3) return null;
  const [a, b, c] = [dd - (d * d) / n, dr - (d * r) / n, rr - (r * r) / n];
  const [p, q] = [de - (d * e) / n, re - (r * e) / n];
  const weakest = (a + c) / 2 - Math.hypot((a - c) / 2, b);
  if (weakest < LEAST_TEXTURE * n) return null;
  const determinant = a * c - b * b;
  return { down: (c * p - b * q) / determinant, right: (a * q - b * p) / determinant };
}

function logOf(light: Raster): Raster {
  const data = light.data.map((value) =>
    value >= SOUND.from && value <= SOUND.to ? Math.log(value) : Number.NaN,
  );
  return { ...light, data };
}
