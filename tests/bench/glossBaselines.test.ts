import { expect, it } from 'vitest';
import { brightShare, glossBaselines, steepestRise } from './glossBaselines';

const raster = (width: number, data: number[]) => ({
  width,
  height: data.length / width,
  channels: 1 as const,
  data: Float32Array.from(data),
});
const whole = (width: number, height: number) => ({
  width,
  height,
  data: new Uint8Array(width * height).fill(1),
});

it('finds the steepest rise by central differences', () => {
  // Across (0.8 − 0.2) / 2, down (0.9 − 0.1) / 2.
  const light = raster(3, [0, 0.1, 0, 0.2, 0, 0.8, 0, 0.9, 0]);
  expect(steepestRise(light, whole(3, 3))).toBeCloseTo(0.5, 6);
});

it('counts pixels of the stone above the level', () => {
  const mask = { width: 4, height: 1, data: Uint8Array.from([1, 1, 1, 0]) };
  expect(brightShare(raster(4, [0.1, 0.6, 0.5, 0.9]), mask, 0.5)).toBeCloseTo(1 / 3, 12);
  expect(brightShare(raster(1, [1]), { width: 1, height: 1, data: Uint8Array.from([0]) }, 0.5)).toBe(0);
});

it('sees a bright square on a stone, not the outline of the stone, and takes out the mirrored radiance', () => {
  const size = 60;
  const rgba = new Uint8ClampedArray(4 * size * size).fill(255);
  const paint = (from: number, to: number, level: number) => {
    for (let row = from; row < to; row++)
      for (let column = from; column < to; column++)
        rgba.fill(level, 4 * (row * size + column), 4 * (row * size + column) + 3);
  };
  paint(10, 50, 0);
  const corners = [
    [10, 10],
    [10, 49],
    [49, 49],
    [49, 10],
  ] as const;
  const photo = { widthPx: size, heightPx: size, rgba };
  expect(glossBaselines(photo, corners, 1)).toEqual({ gradientScore: 0, areaScore: 0 });
  paint(25, 35, 255);
  const scores = glossBaselines(photo, corners, 1);
  // A corner rises by 1/2 across and down.
  expect(scores.gradientScore).toBeCloseTo(Math.SQRT1_2, 6);
  expect(scores.areaScore).toBeGreaterThan(100 / 40 ** 2);
  expect(glossBaselines(photo, corners, 0.5).gradientScore).toBeCloseTo(2 * scores.gradientScore, 6);
});
