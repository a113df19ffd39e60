import { expect, it } from 'vitest';
import type { Mask, Raster } from '../../src/image/raster';
import { addedLight } from '../../src/measure/addedLight';

const SIZE = 96;
const MM_PER_PX = 0.125;
const mask: Mask = { width: SIZE, height: SIZE, data: new Uint8Array(SIZE * SIZE).fill(1) };

/** A slanted line that adds `mm` of light at every place, blurred by a Gaussian, on a slope of light. */
function lineOf(mm: number, angle: number, sigmaPx: number): Raster {
  const data = Float32Array.from({ length: SIZE * SIZE }, (_, i) => {
    const [row, column] = [Math.floor(i / SIZE), i % SIZE];
    const across = (row - 47.5) * Math.cos(angle) - (column - 47.5) * Math.sin(angle);
    const spread = Math.exp(-(across ** 2) / (2 * sigmaPx ** 2)) / (sigmaPx * Math.sqrt(2 * Math.PI));
    return 0.2 + 0.001 * row + 0.0007 * column + (mm / MM_PER_PX) * spread;
  });
  return { width: SIZE, height: SIZE, channels: 1, data };
}

const endsAt = (angle: number, aside = 0) =>
  [-30, 30].map((s) => [
    47.5 + s * Math.sin(angle) + aside * Math.cos(angle),
    47.5 + s * Math.cos(angle) - aside * Math.sin(angle),
  ]) as unknown as [[number, number], [number, number]];

// Blur moves light about but adds none: the area under a normalized Gaussian is 1.
it.each([
  [0, 0.7],
  [0.5, 0.9],
  [1.2, 0.9],
  [2.4, 0.8],
])('adds up the light of a line at %f rad, blurred by %f px', (angle, sigmaPx) => {
  const added = addedLight(lineOf(0.004, angle, sigmaPx), mask, endsAt(angle), MM_PER_PX);
  expect(added! / 0.004).toBeGreaterThan(0.93);
  expect(added! / 0.004).toBeLessThan(1.07);
});

it('is negative for a dark line, and zero where there is none', () => {
  expect(addedLight(lineOf(-0.004, 0.5, 0.9), mask, endsAt(0.5), MM_PER_PX)! / -0.004).toBeCloseTo(1, 1);
  expect(Math.abs(addedLight(lineOf(0, 0.5, 0.9), mask, endsAt(0.5), MM_PER_PX)!)).toBeLessThan(1e-6);
});

it('bears a line found half a pixel beside', () => {
  const added = addedLight(lineOf(0.004, 0.8, 0.8), mask, endsAt(0.8, 0.5), MM_PER_PX);
  expect(added! / 0.004).toBeGreaterThan(0.85);
});

it('says nothing where too little of the line is seen', () => {
  const hidden = { ...mask, data: new Uint8Array(SIZE * SIZE) };
  expect(addedLight(lineOf(0.004, 0.5, 0.9), hidden, endsAt(0.5), MM_PER_PX)).toBeNull();
});
