import { expect, it } from 'vitest';
import { type HighlightProblem, highlightFit } from '../../src/measure/highlightFit';
import { EVEN_CURVATURE } from '../../src/measure/highlightModel';
import { lampOutline, OUTLINE_RAYS } from '../../src/measure/lampOutline';
import { waviness } from '../../src/measure/waviness';
import { type DrawnLobe, drawLobe } from '../helpers/drawLobe';
import { drawWaves } from '../helpers/drawWaves';

const ALPHA = 0.008;
const RADIUS_PX = 9;
const SLOPE = 0.008;
const WAVELENGTH_PX = 11.3;

const smooth: DrawnLobe = { alpha: ALPHA, radiusPx: RADIUS_PX, body: () => 0.08, noise: 0.002 };
const wavy = (seed: number, slope = SLOPE, wavelengthPx = WAVELENGTH_PX): DrawnLobe => ({
  ...smooth,
  skin: drawWaves({ slope, wavelengthPx, seed }),
});

function read(drawn: DrawnLobe, change?: (problem: HighlightProblem) => HighlightProblem) {
  const problem = change ? change(drawLobe(drawn)) : drawLobe(drawn);
  const { window, prior } = problem;
  const shape = { row: (window.height - 1) / 2, column: (window.width - 1) / 2, mean: prior.curvatureMean };
  const fit = highlightFit(
    problem,
    { ...shape, stretch: 0, skew: 0, alpha: drawn.alpha, change: EVEN_CURVATURE },
    { rounds: 3, iterations: 14, unevenCurvature: true },
  );
  return { problem, fit, found: waviness(problem, fit) };
}

const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8];
const waves = SEEDS.map((seed) => read(wavy(seed)));

it('traces the whole outline of an even image where the fit has it', () => {
  const { problem, fit } = read(smooth);
  const outline = lampOutline(problem, fit);
  expect(outline.length).toBe(OUTLINE_RAYS);
  for (const { offset, slopePerPx } of outline) expect(Math.abs(offset)).toBeLessThan(0.25 * slopePerPx);
});

it('sees no waves on an even skin, and says what they have at most', () => {
  const { found } = read(smooth);
  expect(found).not.toBeNull();
  expect([found!.slope, found!.wavelengthPx]).toEqual([null, null]);
  expect(found!.high).toBeLessThan(SLOPE);
  expect(found!.longestPx).toBeGreaterThan(WAVELENGTH_PX);
});

it('reads the slope of known waves', () => {
  const seen = waves.map(({ found }) => found).filter((found) => found !== null);
  // Where the waves happen to break the image up nothing is said.
  expect(seen.length).toBeGreaterThanOrEqual(7);
  const slopes = seen.map(({ slope }) => slope!).sort((a, b) => a - b);
  expect(Math.abs(Math.log(slopes[3]! / SLOPE))).toBeLessThan(Math.log(1.4));
  const held = seen.filter(({ low, high }) => low < SLOPE && SLOPE < high);
  expect(held.length).toBeGreaterThanOrEqual(6);
});

it('reads their wavelength within a factor of two', () => {
  for (const { found } of waves) {
    if (!found?.wavelengthPx) continue;
    expect(Math.abs(Math.log(found.wavelengthPx / WAVELENGTH_PX))).toBeLessThan(Math.log(2));
  }
});

it('reads steeper waves as steeper', () => {
  const [low, high] = [0.005, 0.009].map((slope) => read(wavy(2, slope)).found!.slope!);
  expect(high!).toBeGreaterThan(1.3 * low!);
});

it('does not take the bend of an even but stretched stone for waves', () => {
  expect(read({ ...smooth, evenness: 0.5, turnDeg: 70 }).found?.slope).toBeNull();
});

it('says the same of a photo of another exposure', () => {
  const darker = read({ ...wavy(3), exposure: 0.5, noise: 0.001 }).found!;
  expect(Math.abs(darker.slope! / waves[2]!.found!.slope! - 1)).toBeLessThan(0.1);
});

it('says the same of a mirrored photo', () => {
  const mirrored = read(wavy(3), (problem) => {
    const { window } = problem;
    const flipped = window.values.map((_, i) => {
      const column = i % window.width;
      return window.values[i - column + window.width - 1 - column]!;
    });
    return { ...problem, window: { ...window, values: flipped } };
  }).found!;
  expect(Math.abs(mirrored.slope! / waves[2]!.found!.slope! - 1)).toBeLessThan(0.1);
});

it('says the same slope of a photo of another scale', () => {
  const smaller = read({ ...wavy(3, SLOPE, (WAVELENGTH_PX * 7) / RADIUS_PX), radiusPx: 7 }).found!;
  expect(Math.abs(Math.log(smaller.slope! / waves[2]!.found!.slope!))).toBeLessThan(Math.log(1.5));
  expect(smaller.wavelengthPx!).toBeLessThan(waves[2]!.found!.wavelengthPx!);
});

it('says nothing of a soft image, a small one or one that the window cuts', () => {
  expect(read({ ...smooth, alpha: 0.06 }).found).toBeNull();
  expect(read({ ...smooth, radiusPx: 2 }).found).toBeNull();
  expect(read({ ...smooth, radiusPx: 24 }).found).toBeNull();
});

it('says nothing of an image with a hole', () => {
  const polish = (right: number, up: number) => (Math.hypot(right - 2, up + 1) < 4 ? 0 : 1);
  expect(read({ ...smooth, polish }).found).toBeNull();
});
