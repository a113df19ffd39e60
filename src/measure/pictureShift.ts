import type { LightSlopes } from './lightSlopes';

/** Where one picture lies on another. */
export interface PictureShift {
  /** Pixels by which the content lies farther down and right in the other picture. */
  readonly down: number;
  readonly right: number;
  /** Correlation of the slopes there, −1 to 1; 0 when too little can be compared. */
  readonly likeness: number;
}

/** Share of the pixels that must be comparable. */
const LEAST_SHARE = 0.02;

/**
 * Finds the shift at which the slopes of two pictures agree best, by normalized correlation.
 *
 * @param a - One picture.
 * @param b - Another of equal size.
 * @param about - Shift in whole pixels to look around.
 * @param reachPx - How far around it, whole pixels.
 * @returns The best shift, to parts of a pixel by a parabola through its neighbors.
 * @see Lewis 1995, "Fast normalized cross-correlation", eq. 2, applied to gradients.
 */
export function pictureShift(
  a: LightSlopes,
  b: LightSlopes,
  about: { readonly down: number; readonly right: number },
  reachPx: number,
): PictureShift {
  const likenessAt = (down: number, right: number) => correlation(a, b, down, right);
  let best = { ...about, likeness: -1 };
  for (let down = about.down - reachPx; down <= about.down + reachPx; down++) {
    for (let right = about.right - reachPx; right <= about.right + reachPx; right++) {
      const likeness = likenessAt(down, right);
      if (likeness > best.likeness) best = { down, right, likeness };
    }
  }
  const { down, right, likeness } = best;
  return {
    down: down + vertex(likenessAt(down - 1, right), likeness, likenessAt(down + 1, right)),
    right: right + vertex(likenessAt(down, right - 1), likeness, likenessAt(down, right + 1)),
    likeness,
  };
}

function correlation(a: LightSlopes, b: LightSlopes, down: number, right: number): number {
  const { width, height } = a;
  let [product, squareA, squareB, count] = [0, 0, 0, 0];
  for (let row = Math.max(0, -down); row < Math.min(height, height - down); row++) {
    for (let column = Math.max(0, -right); column < Math.min(width, width - right); column++) {
      const i = row * width + column;
      const j = i + down * width + right;
      const both = a.down[i]! * b.down[j]! + a.right[i]! * b.right[j]!;
      if (Number.isNaN(both)) continue;
      product += both;
      squareA += a.down[i]! ** 2 + a.right[i]! ** 2;
      squareB += b.down[j]! ** 2 + b.right[j]! ** 2;
      count++;
    }
  }
  return count < LEAST_SHARE * width * height || squareA * squareB === 0
    ? 0
    : product / Math.sqrt(squareA * squareB);
}

/** Place of a parabola's top, given its values at −1, 0 and 1. */
function vertex(before: number, here: number, after: number): number {
  const bend = before - 2 * here + after;
  return bend < 0 ? Math.max(-0.5, Math.min(0.5, (before - after) / (2 * bend))) : 0;
}
