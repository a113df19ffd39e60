import type { Raster } from '../image/raster';
import { samplePixel } from './samplePixel';
import { solveSymmetric } from './solveSymmetric';

export interface PatchShift {
  readonly down: number;
  readonly right: number;
}

const ROUNDS = 20;
const ENOUGH_PX = 0.003;
/** Light that is neither noise nor near the camera's limit. */
const SOUND = { from: 0.003, to: 0.9 };
/** A black pixel is taken for this. */
const LEAST_LIGHT = 0.0005;
/** Darker places count less: the noise of a code there is a large share of the light. */
const FULL_WEIGHT = 0.05;
/** Least curvature of the misfit, per pixel of the patch, without which a direction is not fixed. */
const LEAST_TEXTURE = 2e-5;

/**
 * Shift between two small pictures of the same place to a fraction of a pixel; brightness may differ by a factor.
 *
 * @param a - One channel, linear light.
 * @param b - The other picture, larger on every side by `margin`.
 * @param margin - Pixels; a shift about as large means that the place was not found again.
 * @returns Pixels by which the content lies farther down and right in `b`; null when the patch does not fix it.
 * @see Lucas & Kanade 1981, on logarithms and with a free offset.
 */
export function patchShift(a: Raster, b: Raster, margin: number): PatchShift | null {
  // What counts is decided by the first picture alone: were it by the noisier one, its noise would choose.
  const gain = Math.min(1, meanOf(b) / meanOf(a));
  const from = logOf(a, SOUND.from / gain);
  const to = logOf(b, 0);
  const fullWeight = FULL_WEIGHT / gain;
  let [down, right] = [0, 0];
  for (let round = 0; round < ROUNDS; round++) {
    const step = stepFrom(from, to, fullWeight, margin + down, margin + right);
    if (!step) return null;
    down += step.down;
    right += step.right;
    if (Math.max(Math.abs(down), Math.abs(right)) >= margin - 1) break;
    if (Math.hypot(step.down, step.right) < ENOUGH_PX) break;
  }
  return { down, right };
}

/** One step of Gauss and Newton over [offset of ln light, down, right]. */
function stepFrom(
  from: Raster,
  to: Raster,
  fullWeight: number,
  down: number,
  right: number,
): PatchShift | null {
  const { width, height, data } = from;
  const matrix = new Float64Array(9);
  const left = new Float64Array(3);
  let count = 0;
  for (let row = 1; row < height - 1; row++) {
    for (let column = 1; column < width - 1; column++) {
      const i = row * width + column;
      const there = samplePixel(to, row + down, column + right);
      const slopes = [1, (data[i + width]! - data[i - width]!) / 2, (data[i + 1]! - data[i - 1]!) / 2];
      const error = data[i]! - there;
      if (Number.isNaN(error + slopes[1]! + slopes[2]!)) continue;
      const weight = Math.min(1, Math.exp(data[i]!) / fullWeight);
      for (let j = 0; j < 3; j++) {
        left[j]! += weight * slopes[j]! * error;
        for (let k = 0; k < 3; k++) matrix[3 * j + k]! += weight * slopes[j]! * slopes[k]!;
      }
      count++;
    }
  }
  if (count < data.length / 3 || !hasTexture(matrix)) return null;
  const step = solveSymmetric(matrix, left);
  return step && { down: step[1]!, right: step[2]! };
}

/** Whether both directions are fixed once the offset is free. */
function hasTexture(m: Float64Array): boolean {
  const downward = m[4]! - m[1]! ** 2 / m[0]!;
  const rightward = m[8]! - m[2]! ** 2 / m[0]!;
  const both = m[5]! - (m[1]! * m[2]!) / m[0]!;
  const weakest = (downward + rightward) / 2 - Math.hypot((downward - rightward) / 2, both);
  return weakest > LEAST_TEXTURE * m[0]!;
}

function meanOf({ data }: Raster): number {
  return data.reduce((sum, value) => sum + value, 0) / data.length;
}

/** ln light; NaN near the camera's limit and below a level. */
function logOf(light: Raster, from: number): Raster {
  const data = light.data.map((value) =>
    value >= from && value <= SOUND.to ? Math.log(Math.max(LEAST_LIGHT, value)) : Number.NaN,
  );
  return { ...light, data };
}
