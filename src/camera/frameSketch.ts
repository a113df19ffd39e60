import type { Raster } from '../image/raster';

/** A frame in a few cells: enough to tell whether something in it was moved. */
export interface FrameSketch {
  /** Cells of a row. */
  readonly width: number;
  /** Mean of red, green and blue of each cell, linear, row by row. */
  readonly light: readonly number[];
}

/** Cells along the longer side: on a frame that shows 150 mm each is 4 mm wide, half the least stone. */
const CELLS = 40;
/** Noise, flicker of a lamp and the camera's own sharpening stay below such a share of a cell's light. */
const CHANGED = 0.1;
/** Added to each cell's light, since in the dark noise is a large share; 1 = the camera's limit. */
const DARK = 0.02;
/** So many cells at least change when a stone is moved by half its width. */
const LEAST_CELLS = 2;

/** @param raster - RGB raster of the frame in linear light. */
export function frameSketch({ width, height, data }: Raster): FrameSketch {
  const side = Math.max(1, Math.floor(Math.max(width, height) / CELLS));
  const [across, down] = [Math.max(1, Math.floor(width / side)), Math.max(1, Math.floor(height / side))];
  const sums = new Float64Array(across * down);
  for (let row = 0; row < Math.min(height, down * side); row++) {
    const first = Math.floor(row / side) * across;
    for (let cell = 0; cell < across; cell++) {
      let sum = 0;
      const end = 3 * (row * width + Math.min(width, (cell + 1) * side));
      for (let i = 3 * (row * width + cell * side); i < end; i++) sum += data[i]!;
      sums[first + cell]! += sum;
    }
  }
  return { width: across, light: Array.from(sums, (sum) => sum / (3 * side * side)) };
}

/** Whether two frames show something moved; a change of exposure, which changes all cells alike, is none. */
export function hasChanged(before: FrameSketch, after: FrameSketch): boolean {
  if (before.width !== after.width || before.light.length !== after.light.length) return true;
  const ratios = after.light.map((light, i) => (light + DARK) / (before.light[i]! + DARK));
  const exposure = [...ratios].sort((a, b) => a - b)[ratios.length >> 1] ?? 1;
  return ratios.filter((ratio) => Math.abs(Math.log(ratio / exposure)) > CHANGED).length >= LEAST_CELLS;
}
