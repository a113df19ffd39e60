/** A place this near to a pixel's center is taken for it, pixels. */
const ON_CENTER = 0.02;

/**
 * Red, green and blue codes between pixels by cubic convolution, which keeps edges sharper than bilinear
 * interpolation; outside, those of the nearest edge pixel.
 *
 * @param rgba - Row-major, four bytes a pixel.
 * @param size - Of the picture, pixels.
 * @param row - Row, pixel centers at whole numbers.
 * @param column - Column likewise.
 * @param into - Takes the three codes, 0 to 255.
 * @see Keys 1981, "Cubic convolution interpolation for digital image processing", eq. 4 with a = −1/2.
 */
export function sampleCodes(
  rgba: Uint8ClampedArray,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
  row: number,
  column: number,
  into: Float64Array,
): void {
  const top = Math.floor(row + ON_CENTER);
  const left = Math.floor(column + ON_CENTER);
  const down = row - top;
  const across = column - left;
  const isOnCenter = down < ON_CENTER && across < ON_CENTER;
  const [first, last] = isOnCenter ? [0, 0] : [-1, 2];
  into.fill(0);
  for (let y = first; y <= last; y++) {
    const weightY = isOnCenter ? 1 : kernel(y - down);
    const from = 4 * widthPx * Math.min(heightPx - 1, Math.max(0, top + y));
    for (let x = first; x <= last; x++) {
      const weight = isOnCenter ? 1 : weightY * kernel(x - across);
      const i = from + 4 * Math.min(widthPx - 1, Math.max(0, left + x));
      into[0]! += weight * rgba[i]!;
      into[1]! += weight * rgba[i + 1]!;
      into[2]! += weight * rgba[i + 2]!;
    }
  }
  for (let c = 0; c < 3; c++) into[c] = Math.min(255, Math.max(0, into[c]!));
}

function kernel(at: number): number {
  const x = Math.abs(at);
  if (x >= 2) return 0;
  return x <= 1 ? (1.5 * x - 2.5) * x * x + 1 : ((-0.5 * x + 2.5) * x - 4) * x + 2;
}
