/** Pixels between the two that are compared; two, so that noise of single pixels counts less. */
const STEP_PX = 2;

/**
 * Sharpness of a picture, for choosing among photos of one scene: Brenner's gradient, the mean square of differences
 * between pixels two apart, here in both directions and over the square of the mean, so that a change of
 * brightness does not count.
 *
 * @param rgba - Row-major RGBA, 8 bits a channel in sRGB, `4 * width * height` bytes.
 * @param width - Pixels, more than 2.
 * @param height - Pixels, more than 2.
 * @returns 0 for an even picture, more for a sharper one; only comparable between pictures of one scene and size.
 * @throws RangeError if the picture is no more than two pixels wide or high, or its bytes do not fit its size.
 * @see Brenner et al. 1976, An automated microscope for cytologic research, J. Histochem. Cytochem. 24, 100–111
 *   (from memory); normalized as in Santos et al. 1997, J. Microscopy 188, 264–272 (from memory).
 */
export function sharpness(rgba: Uint8ClampedArray, width: number, height: number): number {
  if (width <= STEP_PX || height <= STEP_PX)
    throw new RangeError('The picture must be more than 2 px wide and high.');
  if (rgba.length !== 4 * width * height)
    throw new RangeError('The bytes do not fit the size of the picture.');
  const luma = lumaOf(rgba);
  let [squares, count, sum] = [0, 0, 0];
  for (let row = 0; row < height; row++) {
    for (let column = 0, i = row * width; column < width; column++, i++) {
      const here = luma[i]!;
      sum += here;
      if (column + STEP_PX < width) {
        const across = luma[i + STEP_PX]! - here;
        squares += across * across;
        count++;
      }
      if (row + STEP_PX < height) {
        const down = luma[i + STEP_PX * width]! - here;
        squares += down * down;
        count++;
      }
    }
  }
  const mean = sum / luma.length;
  return mean === 0 ? 0 : squares / count / (mean * mean);
}

/** Luma with the weights of ITU-R BT.709. */
function lumaOf(rgba: Uint8ClampedArray): Float32Array {
  const luma = new Float32Array(rgba.length / 4);
  for (let i = 0, from = 0; i < luma.length; i++, from += 4) {
    luma[i] = 0.2126 * rgba[from]! + 0.7152 * rgba[from + 1]! + 0.0722 * rgba[from + 2]!;
  }
  return luma;
}
