import { expect, it } from 'vitest';
import { type FitEffort, highlightFit, refit } from '../../src/measure/highlightFit';
import { EVEN_CURVATURE, type LobeShape } from '../../src/measure/highlightModel';
import { type DrawnLobe, drawLobe } from '../helpers/drawLobe';
import { largestDifference } from '../helpers/largestDifference';

const effort: FitEffort = { rounds: 3, iterations: 14, unevenCurvature: false };

/** Fits a drawn highlight from a start that is off in place, size and roughness. */
function fitted(drawn: DrawnLobe) {
  const problem = drawLobe(drawn);
  const start: LobeShape = {
    row: 22,
    column: 19,
    mean: problem.prior.curvatureMean + 0.3,
    stretch: 0,
    skew: 0,
    alpha: 1.6 * drawn.alpha,
    change: EVEN_CURVATURE,
  };
  return { problem, fit: highlightFit(problem, start, effort) };
}

/** A bright stone's body. */
const slope = (x: number, y: number) => 0.05 + 0.02 * x - 0.015 * y;
/** A dark stone's body: below half the height of the widest lobe. */
const darkSlope = (x: number, y: number) => 0.2 * slope(x, y);

// The highlights are sums of Walter et al. 2007, eq. 20, over the lamp: tests/helpers/drawLobe.ts.
it.each([0.02, 0.05, 0.1, 0.2, 0.3])('recovers a roughness of %s within a tenth', (alpha) => {
  const { fit } = fitted({ alpha, body: darkSlope });
  expect(Math.abs(fit.shape.alpha / alpha - 1)).toBeLessThan(0.1);
  expect(fit.shape.row).toBeCloseTo(19.8, 0);
  expect(fit.shape.column).toBeCloseTo(20.3, 0);
});

it('takes a sloping body off', () => {
  const bare = fitted({ alpha: 0.06 });
  const lit = fitted({ alpha: 0.06, body: slope });
  expect(Math.abs(lit.fit.shape.alpha / bare.fit.shape.alpha - 1)).toBeLessThan(0.03);
  const body = Array.from(lit.fit.body, (_, i) =>
    slope((2 * (i % 41)) / 40 - 1, 1 - (2 * Math.floor(i / 41)) / 40),
  );
  expect(largestDifference(lit.fit.body, body)).toBeLessThan(0.02);
});

it('does not ask how long the photo was exposed', () => {
  // The noise floor of 8 bits is the only thing that does not scale.
  const full = fitted({ alpha: 0.06, body: slope });
  const half = fitted({ alpha: 0.06, body: slope, exposure: 0.5 });
  expect(Math.abs(half.fit.shape.alpha / full.fit.shape.alpha - 1)).toBeLessThan(0.02);
  expect(half.fit.amplitude / full.fit.amplitude).toBeCloseTo(0.5, 2);
});

it('reads the same roughness off a picture turned by a quarter', () => {
  const upright = fitted({ alpha: 0.06, turnDeg: 20 });
  const turned = fitted({ alpha: 0.06, turnDeg: 110 });
  expect(turned.fit.shape.alpha / upright.fit.shape.alpha).toBeCloseTo(1, 2);
  expect(turned.fit.shape.stretch).toBeCloseTo(-upright.fit.shape.stretch, 1);
});

it('leaves out a scratch of light and a dark pit', () => {
  const flawed = (x: number, y: number) =>
    slope(x, y) + (Math.abs(y - 0.6) < 0.03 ? 0.4 : 0) - (Math.hypot(x + 0.3, y + 0.3) < 0.1 ? 0.05 : 0);
  const clean = fitted({ alpha: 0.06, body: slope });
  expect(
    Math.abs(fitted({ alpha: 0.06, body: flawed }).fit.shape.alpha / clean.fit.shape.alpha - 1),
  ).toBeLessThan(0.1);
});

it('takes a clipped pixel as a lower bound', () => {
  const { problem, fit } = fitted({ alpha: 0.04, body: slope });
  const limit = 0.6 * Math.max(...problem.window.values);
  const window = {
    ...problem.window,
    values: problem.window.values.map((value) => Math.min(value, limit)),
    use: problem.window.use.map((_, i) => (problem.window.values[i]! >= limit ? 2 : 1)),
  };
  const clipped = highlightFit({ ...problem, window }, fit.shape, effort);
  expect(Math.abs(clipped.shape.alpha / 0.04 - 1)).toBeLessThan(0.15);
});

it('fits a wider lobe as rougher', () => {
  const alphas = [0.03, 0.045, 0.07, 0.1, 0.15].map((alpha) => fitted({ alpha }).fit.shape.alpha);
  expect(alphas).toEqual([...alphas].sort((a, b) => a - b));
});

it('costs more where the roughness is held away from the best', () => {
  const { problem, fit } = fitted({ alpha: 0.08, noise: 0.004 });
  const free = refit(problem, fit, null);
  const costs = [0.6, 0.8, 1, 1.25, 1.6].map((factor) => refit(problem, fit, factor * free.shape.alpha).cost);
  expect(costs[0]!).toBeGreaterThan(costs[1]!);
  expect(costs[1]!).toBeGreaterThan(costs[2]!);
  expect(costs[3]!).toBeGreaterThan(costs[2]!);
  expect(costs[4]!).toBeGreaterThan(costs[3]!);
  expect(refit(problem, fit, 0.1).shape.alpha).toBeCloseTo(0.1, 12);
});

it('reads a mineral of higher index as rougher, since a perfect polish would mirror more', () => {
  const { problem, fit } = fitted({ alpha: 0.1 });
  const brighter = { ...problem, prior: { ...problem.prior, amplitude: 1.5 * problem.prior.amplitude } };
  expect(refit(brighter, fit, null).shape.alpha).toBeGreaterThan(1.1 * fit.shape.alpha);
});
