import type { Mask } from '../../src/image/raster';

/** A mask drawn as text: `#` is inside, anything else outside; one argument a row. */
export function drawMask(...rows: string[]): Mask {
  const width = rows[0]?.length ?? 0;
  if (rows.some((row) => row.length !== width)) throw new Error('Draw every row equally long.');
  return {
    width,
    height: rows.length,
    data: Uint8Array.from(rows.join(''), (sign) => (sign === '#' ? 1 : 0)),
  };
}

/** The text of a mask, for comparing with a drawing. */
export function showMask({ width, height, data }: Mask): string[] {
  return Array.from({ length: height }, (_, row) =>
    Array.from(data.subarray(row * width, (row + 1) * width), (inside) => (inside ? '#' : '.')).join(''),
  );
}
