import { expect, it } from 'vitest';
import * as body from '../../src/measure/bodyFit';
import { largestDifference } from '../helpers/largestDifference';

const [WIDTH, HEIGHT] = [9, 7];
const COUNT = WIDTH * HEIGHT;
const ones = new Float64Array(COUNT).fill(1);
const draw = (value: (x: number, y: number) => number) =>
  Float64Array.from({ length: COUNT }, (_, i) => value(i % WIDTH, Math.floor(i / WIDTH)));
const bodyFit = (values: Float64Array, weights: Float64Array, dimming: Float64Array, ridge: number) =>
  body.bodyFit(values, body.bodyTerms(weights, dimming, WIDTH, ridge));
const plane = draw((x, y) => 0.3 + 0.02 * x - 0.01 * y);

it('gives back a plane to the last digits', () => {
  expect(largestDifference(bodyFit(plane, ones, ones, 30), [...plane])).toBeLessThan(1e-12);
});

it('gives back a plane dimmed as given', () => {
  const dimming = draw((x, y) => 1 / (1 + 0.01 * ((x - 4) ** 2 + (y - 3) ** 2)));
  const dimmed = plane.map((value, i) => value * dimming[i]!);
  expect(largestDifference(bodyFit(dimmed, ones, dimming, 30), [...dimmed])).toBeLessThan(1e-12);
});

it('is not moved by pixels without weight', () => {
  const spoiled = plane.map((value, i) => (i % 7 === 0 ? 50 : value));
  const weights = ones.map((_, i) => (i % 7 === 0 ? 0 : 1));
  expect(largestDifference(bodyFit(spoiled, weights, ones, 30), [...plane])).toBeLessThan(1e-12);
});

it('follows a bowl freely and hardly when it is held', () => {
  const bowl = draw((x, y) => 0.1 * ((x - 4) ** 2 + (y - 3) ** 2));
  const error = (ridge: number) => largestDifference(bodyFit(bowl, ones, ones, ridge), [...bowl]);
  expect(error(0)).toBeLessThan(1e-9);
  expect(error(1e6)).toBeGreaterThan(0.5);
  expect(error(3)).toBeLessThan(error(300));
});

it('scales with the light', () => {
  const rough = draw((x, y) => Math.sin(x * y));
  const bright = bodyFit(
    rough.map((value) => 8 * value),
    ones,
    ones,
    30,
  );
  expect(
    largestDifference(
      bright,
      [...bodyFit(rough, ones, ones, 30)].map((value) => 8 * value),
    ),
  ).toBeLessThan(1e-12);
});

it('knows no body from fewer than ten pixels', () => {
  const few = ones.map((_, i) => (i < 9 ? 1 : 0));
  expect(bodyFit(plane, few, ones, 30).every((value) => value === 0)).toBe(true);
});
