import type { Mask } from '../image/raster';

/**
 * Takes a rim off a mask: keeps the pixels whose whole disc of that radius lies inside.
 *
 * @param mask - Yes/no picture.
 * @param radiusPx - Whole pixels, ≥ 0.
 * @returns The smaller mask; beyond the picture counts as outside.
 */
export function shrinkMask(mask: Mask, radiusPx: number): Mask {
  const { width, height } = mask;
  const above = insideUpAndDown(mask);
  // Half the disc's height at each column of it.
  const reach = Int32Array.from({ length: 2 * radiusPx + 1 }, (_, k) =>
    Math.floor(Math.sqrt(radiusPx * radiusPx - (k - radiusPx) ** 2)),
  );
  const data = new Uint8Array(width * height);
  for (let row = 0; row < height; row++) {
    // Columns up to the disc's last one that reach over its whole height: in the middle of a mask all of them do.
    let clear = 0;
    for (let last = 0; last < width; last++) {
      const end = row * width + last;
      clear = above[end]! > radiusPx ? clear + 1 : 0;
      if (last < 2 * radiusPx || above[end]! === 0) continue;
      const first = end - 2 * radiusPx;
      let k = clear >= reach.length ? reach.length : 0;
      while (k < reach.length && above[first + k]! > reach[k]!) k++;
      if (k === reach.length) data[end - radiusPx] = 1;
    }
  }
  return { width, height, data };
}

/** How many pixels lie inside one after the other, up as well as down, the pixel itself counted; 0 outside. */
function insideUpAndDown({ width, height, data }: Mask): Int32Array {
  const runs = new Int32Array(width * height);
  for (let i = 0; i < runs.length; i++) if (data[i]) runs[i] = 1 + (i < width ? 0 : runs[i - width]!);
  const below = new Int32Array(width);
  for (let row = height - 1; row >= 0; row--) {
    for (let column = 0, i = row * width; column < width; column++, i++) {
      below[column] = data[i] ? below[column]! + 1 : 0;
      runs[i] = Math.min(runs[i]!, below[column]!);
    }
  }
  return runs;
}
