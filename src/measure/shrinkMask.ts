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
  const disc: [number, number][] = [];
  for (let y = -radiusPx; y <= radiusPx; y++) {
    for (let x = -radiusPx; x <= radiusPx; x++) {
      const rim = x * x + y * y <= radiusPx * radiusPx && x * x + y * y > (radiusPx - 1.5) ** 2;
      if (rim) disc.push([y, x]);
    }
  }
  const data = mask.data.map((inside, i) => {
    if (!inside) return 0;
    const row = Math.floor(i / width);
    const column = i % width;
    const whole = disc.every(([y, x]) => {
      const r = row + y;
      const c = column + x;
      return r >= 0 && c >= 0 && r < height && c < width && mask.data[r * width + c] === 1;
    });
    return whole ? 1 : 0;
  });
  return { width, height, data };
}
