import { expect, it } from 'vitest';
import { highlightFit } from '../../src/measure/highlightFit';
import { EVEN_CURVATURE } from '../../src/measure/highlightModel';
import { highlightProfile } from '../../src/measure/highlightProfile';
import { drawLobe, LOBE_LAMP_SLOPE } from '../helpers/drawLobe';

const ALPHA = 0.06;
const problem = drawLobe({ alpha: ALPHA, body: (x) => 0.05 + 0.01 * x });
const start = { row: 20, column: 20, mean: problem.prior.curvatureMean, stretch: 0, skew: 0, alpha: ALPHA };
const fit = highlightFit(
  problem,
  { ...start, change: EVEN_CURVATURE },
  { rounds: 2, iterations: 10, unevenCurvature: false },
);
const profile = highlightProfile(problem.window, problem.optics, fit);

it('starts near a² / (a² + α²) and falls', () => {
  const height = LOBE_LAMP_SLOPE ** 2 / (LOBE_LAMP_SLOPE ** 2 + ALPHA ** 2);
  expect(Math.abs(profile.measured[0]! / height - 1)).toBeLessThan(0.1);
  expect(profile.measured.slice(1).every((share, i) => share < profile.measured[i]! + 0.01)).toBe(true);
});

it('counts distance outward from the center in lamp radii', () => {
  expect(profile.distance).toEqual([...profile.distance].sort((a, b) => a - b));
  expect(profile.distance[0]!).toBeLessThan(0.5);
  expect(profile.distance.length).toBeLessThanOrEqual(24);
});

it('lays the model on the measurement where the model is true', () => {
  profile.measured.forEach((share, i) => {
    expect(Math.abs(share - profile.model[i]!)).toBeLessThan(0.02);
  });
});

it('leaves out the rings that no used pixel is on', () => {
  const use = problem.window.use.map((_, i) =>
    Math.abs((i % 41) - 20) < 3 && Math.abs(Math.floor(i / 41) - 20) < 3 ? 1 : 0,
  );
  const small = highlightProfile({ ...problem.window, use }, problem.optics, fit);
  expect(small.distance.length).toBeGreaterThan(0);
  expect(Math.max(...small.distance)).toBeLessThan(Math.max(...profile.distance));
  const empty = highlightProfile({ ...problem.window, use: use.map(() => 0) }, problem.optics, fit);
  expect(empty).toEqual({ distance: [], measured: [], model: [] });
});
