import { expect, it } from 'vitest';
import { type FitEffort, highlightFit } from '../../src/measure/highlightFit';
import { EVEN_CURVATURE } from '../../src/measure/highlightModel';
import { roughnessEstimate } from '../../src/measure/roughnessEstimate';
import { type DrawnLobe, drawLobe } from '../helpers/drawLobe';

const effort: FitEffort = { rounds: 3, iterations: 14, unevenCurvature: false };

/** A drawn lobe and its fit, begun at the truth. */
function fitted(drawn: DrawnLobe) {
  const problem = drawLobe(drawn);
  const { curvatureMean: mean } = problem.prior;
  const start = {
    row: 20,
    column: 20,
    mean,
    stretch: 0,
    skew: 0,
    alpha: drawn.alpha,
    change: EVEN_CURVATURE,
  };
  return { problem, fit: highlightFit(problem, start, effort) };
}

function estimate(drawn: DrawnLobe) {
  const { problem, fit } = fitted(drawn);
  return roughnessEstimate(problem, fit);
}

it.each([0.02, 0.06, 0.2])('holds the true roughness of %s, and its own middle', (alpha) => {
  const { low, high, alpha: middle } = estimate({ alpha, noise: 0.003 });
  expect(low).toBeLessThan(alpha);
  expect(high).toBeGreaterThan(alpha);
  expect(low).toBeLessThan(middle);
  expect(high).toBeGreaterThan(middle);
});

it('is narrow enough to tell satin from gloss', () => {
  const { low, high } = estimate({ alpha: 0.06, noise: 0.003 });
  expect(high / low).toBeLessThan(3);
});

it('widens with the noise', () => {
  const widths = [0.003, 0.03, 0.06].map((noise) => {
    const { low, high } = estimate({ alpha: 0.2, noise });
    return Math.log(high / low);
  });
  expect(widths[1]!).toBeGreaterThan(1.03 * widths[0]!);
  expect(widths[2]!).toBeGreaterThan(1.1 * widths[1]!);
});

it('is wide, and stays within what can be measured, where a faint lobe drowns in noise', () => {
  const { low, high } = estimate({ alpha: 0.5, noise: 0.05 });
  expect(low).toBeGreaterThanOrEqual(0.0015);
  expect(high).toBeLessThanOrEqual(1);
  expect(high / low).toBeGreaterThan(2);
});

it('does not call a small, blurred image of the lamp a perfect mirror', () => {
  const { alpha, low } = estimate({ alpha: 0.006, noise: 0.02 });
  expect(alpha).toBeGreaterThan(0.004);
  expect(low).toBeLessThan(0.006);
});

it('stays a number where the best fit is smoother than any polish', () => {
  const { problem, fit } = fitted({ alpha: 0.0016, noise: 0.0005 });
  const { alpha, low, high } = roughnessEstimate(problem, {
    ...fit,
    shape: { ...fit.shape, alpha: 0.0015 },
    cost: 0,
  });
  expect(alpha).toBeGreaterThanOrEqual(0.004);
  expect(low).toBeGreaterThan(0);
  expect(high).toBeGreaterThan(low);
});
