import fc from 'fast-check';
import { expect, it } from 'vitest';
import { LUMINANCE_WEIGHTS, luminance } from '../../src/image/luminance';
import type { Raster } from '../../src/image/raster';
import { bodyCovariance, colorWeights } from '../../src/measure/colorWeights';
import { largestDifference } from '../helpers/largestDifference';

const SIDE = 30;
const mask = { width: SIDE, height: SIDE, data: new Uint8Array(SIDE * SIDE).fill(1) };

/** Bands of one color of any strength over a gray ground. */
function banded(color: readonly number[], ground = 0.1): Raster {
  const data = Float32Array.from(
    { length: 3 * SIDE * SIDE },
    (_, i) => ground + color[i % 3]! * (0.5 + 0.5 * Math.sin(0.7 * Math.floor(i / 3))),
  );
  return { width: SIDE, height: SIDE, channels: 3, data };
}

const spread = (values: ArrayLike<number>) => {
  const list = Array.from(values);
  const mean = list.reduce((sum, value) => sum + value, 0) / list.length;
  return Math.sqrt(list.reduce((sum, value) => sum + (value - mean) ** 2, 0) / list.length);
};

it('turns down a pattern of one color, however saturated', () => {
  for (const color of [
    [0.3, 0.08, 0.02],
    [0.05, 0.2, 0.1],
    [0.02, 0.05, 0.25],
  ]) {
    const stone = banded(color);
    const weighted = luminance(stone, colorWeights(bodyCovariance(stone, mask), 0.002));
    expect(spread(weighted.data)).toBeLessThan(0.05 * spread(luminance(stone).data));
  }
});

const share = fc.double({ min: 0, max: 0.5, noNaN: true });

it('keeps the lamp at one: the weights add up to one', () => {
  fc.assert(
    fc.property(share, share, share, fc.double({ min: 1e-4, max: 1, noNaN: true }), (r, g, b, patience) => {
      const weights = colorWeights(bodyCovariance(banded([r, g, b]), mask), patience);
      expect(weights[0] + weights[1] + weights[2]).toBeCloseTo(1, 6);
    }),
    { numRuns: 30 },
  );
});

it('stays with luminance on a plain stone and where patience is long', () => {
  const plain = colorWeights(bodyCovariance(banded([0, 0, 0]), mask), 0.01);
  expect(largestDifference(plain, [...LUMINANCE_WEIGHTS])).toBeLessThan(1e-6);
  const patient = colorWeights(bodyCovariance(banded([0.1, 0.05, 0.02]), mask), 10);
  expect(largestDifference(patient, [...LUMINANCE_WEIGHTS])).toBeLessThan(1e-3);
});

it('can do nothing about a gray pattern', () => {
  const stone = banded([0.2, 0.2, 0.2]);
  const weighted = luminance(stone, colorWeights(bodyCovariance(stone, mask), 0.002));
  expect(spread(weighted.data) / spread(luminance(stone).data)).toBeCloseTo(1, 3);
});

it('leaves the highlight itself out of the pattern', () => {
  // A clipped spot on a twentieth of a red-banded stone: its difference from the red ground is bluish, and no pattern.
  const stone = banded([0.3, 0.08, 0.02]);
  const spot = { ...stone, data: stone.data.map((value, i) => (i < 3 * 45 ? 1 : value)) };
  expect(
    largestDifference(
      colorWeights(bodyCovariance(spot, mask), 0.002),
      colorWeights(bodyCovariance(stone, mask), 0.002),
    ),
  ).toBeLessThan(0.05);
});

it('asks the stone only, not what lies around it', () => {
  const stone = banded([0.3, 0.08, 0.02]);
  const half = { ...mask, data: mask.data.map((_, i) => (i < 450 ? 1 : 0)) };
  const spoiled = { ...stone, data: stone.data.map((value, i) => (i < 3 * 450 ? value : i % 5)) };
  expect(colorWeights(bodyCovariance(spoiled, half), 0.002)).toEqual(
    colorWeights(bodyCovariance(stone, half), 0.002),
  );
});
