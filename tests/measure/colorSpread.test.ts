import { expect, it } from 'vitest';
import type { Raster } from '../../src/image/raster';
import { colorSpread } from '../../src/measure/colorSpread';
import type { HighlightFit } from '../../src/measure/highlightFit';
import { EVEN_CURVATURE, type HighlightWindow } from '../../src/measure/highlightModel';

const SIDE = 21;
const bell = Float64Array.from({ length: SIDE * SIDE }, (_, i) =>
  Math.exp(-((Math.floor(i / SIDE) - 10) ** 2 + ((i % SIDE) - 10) ** 2) / 20),
);
const window: HighlightWindow = {
  width: SIDE,
  height: SIDE,
  stepPx: 1,
  row: 0,
  column: 0,
  values: bell,
  use: new Uint8Array(SIDE * SIDE).fill(1),
};
const fit: HighlightFit = {
  shape: { row: 10, column: 10, mean: -3, stretch: 0, skew: 0, alpha: 0.05, change: EVEN_CURVATURE },
  amplitude: 1,
  lobe: bell,
  body: new Float64Array(SIDE * SIDE),
  residualSd: 0.001,
  weights: new Float64Array(SIDE * SIDE).fill(1),
  cost: 0,
};

/** The bell in a color, on a slanting body of another. */
function colored(spot: readonly number[], body: readonly number[]): Raster {
  const data = Float32Array.from({ length: 3 * SIDE * SIDE }, (_, j) => {
    const [i, channel] = [Math.floor(j / 3), j % 3];
    return spot[channel]! * bell[i]! + body[channel]! * (1 + 0.02 * (i % SIDE));
  });
  return { width: SIDE, height: SIDE, channels: 3, data };
}

it("is none for the lamp's own color on any body", () => {
  expect(colorSpread(colored([0.4, 0.4, 0.4], [0.3, 0.1, 0.02]), window, fit)).toBeLessThan(1e-4);
});

it('is the largest less the smallest strength over their mean', () => {
  expect(colorSpread(colored([0.6, 0.4, 0.2], [0.1, 0.1, 0.1]), window, fit)).toBeCloseTo(1, 3);
});

it('does not ask how bright the spot is', () => {
  const [dim, bright] = [colored([0.06, 0.05, 0.04], [0, 0, 0]), colored([0.6, 0.5, 0.4], [0, 0, 0])];
  expect(colorSpread(dim, window, fit)).toBeCloseTo(colorSpread(bright, window, fit), 4);
});

it('asks only the pixels in use', () => {
  const use = window.use.map((_, i) => (i % SIDE < 4 ? 0 : 1));
  const stone = colored([0.4, 0.4, 0.4], [0.1, 0.1, 0.1]);
  const spoiled = {
    ...stone,
    data: stone.data.map((value, j) => (Math.floor(j / 3) % SIDE < 4 ? j % 3 : value)),
  };
  expect(colorSpread(spoiled, { ...window, use }, fit)).toBeLessThan(1e-4);
});

it('is endless for a spot darker than its surroundings, or for none', () => {
  expect(colorSpread(colored([-0.1, -0.1, -0.1], [0.3, 0.3, 0.3]), window, fit)).toBe(
    Number.POSITIVE_INFINITY,
  );
  expect(colorSpread(colored([0, 0, 0], [0, 0, 0]), window, fit)).toBe(Number.POSITIVE_INFINITY);
});
