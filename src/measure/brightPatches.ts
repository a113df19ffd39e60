/** Neighboring pixels above a level, taken together. */
export interface BrightPatch {
  /** Indices of its pixels. */
  readonly pixels: readonly number[];
  /** Mean place, weighted by the light. */
  readonly row: number;
  readonly column: number;
  /** Largest value. */
  readonly peak: number;
}

/**
 * Patches of pixels that lie above a level and touch along a side.
 *
 * @param values - Row-major; NaN lies above no level.
 * @param width - Pixels in a row.
 * @param levelAt - The level at a pixel, above 0.
 * @returns Patches, brightest first.
 */
export function brightPatches(
  values: Float32Array,
  width: number,
  levelAt: (index: number) => number,
): BrightPatch[] {
  const seen = new Uint8Array(values.length);
  const above = (i: number) => i >= 0 && i < values.length && !seen[i] && values[i]! > levelAt(i);
  const patches: BrightPatch[] = [];
  for (let start = 0; start < values.length; start++) {
    // Most are not, and this is quicker to see.
    if (!(values[start]! > 0) || !above(start)) continue;
    const pixels = [start];
    seen[start] = 1;
    for (let k = 0; k < pixels.length; k++) {
      const i = pixels[k]!;
      const column = i % width;
      const beside = [i - width, i + width];
      if (column > 0) beside.push(i - 1);
      if (column < width - 1) beside.push(i + 1);
      for (const next of beside) {
        if (!above(next)) continue;
        seen[next] = 1;
        pixels.push(next);
      }
    }
    patches.push(patchOf(pixels, values, width));
  }
  return patches.sort((a, b) => b.peak - a.peak);
}

function patchOf(pixels: readonly number[], values: Float32Array, width: number): BrightPatch {
  let [row, column, sum, peak] = [0, 0, 0, 0];
  for (const i of pixels) {
    const value = values[i]!;
    row += value * Math.floor(i / width);
    column += value * (i % width);
    sum += value;
    peak = Math.max(peak, value);
  }
  return { pixels, row: row / sum, column: column / sum, peak };
}
