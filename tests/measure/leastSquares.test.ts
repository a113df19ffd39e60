import { expect, it } from 'vitest';
import { type FitSettings, leastSquares } from '../../src/measure/leastSquares';
import golden from '../golden/measure.json';

const settings: FitSettings = { steps: [1e-6, 1e-6], maxIterations: 200, tolerance: 0 };

/** Misra1a: y = b₁ (1 − exp(−b₂ x)), with b₁ in hundreds and b₂ in ten-thousandths. */
function misra1a(p: Float64Array, into: Float64Array): void {
  golden.misra1a.x.forEach((x, i) => {
    into[i] = 100 * p[0]! * (1 - Math.exp(-1e-4 * p[1]! * x)) - golden.misra1a.y[i]!;
  });
}

it('fits a line through three points as one does by hand', () => {
  // y = 1, 2, 4 at x = 0, 1, 2: slope 3/2, level 5/6, squares 1/36 + 4/36 + 1/36.
  const line = (p: Float64Array, into: Float64Array) => {
    [1, 2, 4].forEach((y, x) => {
      into[x] = p[0]! + p[1]! * x - y;
    });
  };
  const { parameters, cost } = leastSquares(line, 3, [0, 0], settings);
  expect(parameters[0]).toBeCloseTo(5 / 6, 7);
  expect(parameters[1]).toBeCloseTo(3 / 2, 7);
  expect(cost).toBeCloseTo(1 / 6, 10);
});

// Source: NIST Statistical Reference Datasets, Misra1a, certified values, from both of its starts.
it('meets the certified values of a published fit', () => {
  for (const [b1, b2] of golden.misra1a.starts as [number, number][]) {
    const fit = leastSquares(misra1a, golden.misra1a.x.length, [b1 / 100, b2 / 1e-4], settings);
    expect(100 * fit.parameters[0]!).toBeCloseTo(238.94212918, 4);
    expect(1e-4 * fit.parameters[1]!).toBeCloseTo(5.5015643181e-4, 10);
    expect(fit.cost).toBeCloseTo(1.2455138894e-1, 9);
  }
});

// Source: SciPy 1.10 optimize.least_squares, tests/golden/measure.py.
it("ends where SciPy's does", () => {
  const fit = leastSquares(misra1a, golden.misra1a.x.length, [2.5, 5], settings);
  expect(fit.cost / golden.misra1a.cost).toBeCloseTo(1, 8);
  expect((100 * fit.parameters[0]!) / golden.misra1a.parameters[0]!).toBeCloseTo(1, 6);
});

/** Rosenbrock 1960, Computer Journal 3(3): a bent valley whose floor is at 1, 1. */
function valley(p: Float64Array, into: Float64Array): void {
  into[0] = 10 * (p[1]! - p[0]! * p[0]!);
  into[1] = 1 - p[0]!;
}

it('follows a bent valley to its floor', () => {
  const { parameters } = leastSquares(valley, 2, [-1.2, 1], settings);
  expect(parameters[0]).toBeCloseTo(1, 4);
  expect(parameters[1]).toBeCloseTo(1, 4);
});

it('never ends worse than it began, however few the iterations', () => {
  let last = 24.2; // Rosenbrock's valley at −1.2, 1.
  for (const maxIterations of [0, 1, 2, 4, 8, 16]) {
    const { cost } = leastSquares(valley, 2, [-1.2, 1], { ...settings, maxIterations });
    expect(cost).toBeLessThanOrEqual(last + 1e-12);
    last = cost;
  }
  expect(last).toBeLessThan(1);
});

it('holds a parameter whose step is zero', () => {
  const { parameters } = leastSquares(valley, 2, [-1.2, 1], { ...settings, steps: [0, 1e-6] });
  expect(parameters[0]).toBe(-1.2);
  expect(parameters[1]).toBeCloseTo(1.44, 6);
});

it('steps back from where the residuals are no numbers', () => {
  const root = (p: Float64Array, into: Float64Array) => {
    into[0] = Math.sqrt(p[0]!) - 0.1;
  };
  const { parameters } = leastSquares(root, 1, [1], { ...settings, steps: [1e-7] });
  expect(parameters[0]).toBeCloseTo(0.01, 4);
});

it('ends as well with derivatives that are only corrected, in fewer looks', () => {
  const looks = (corrects: boolean) => {
    let count = 0;
    const counted = (p: Float64Array, into: Float64Array) => {
      count++;
      misra1a(p, into);
    };
    const start = [2.5, 5];
    const fit = leastSquares(counted, golden.misra1a.x.length, start, {
      ...settings,
      corrects,
      tolerance: 1e-9,
    });
    // Source: NIST Statistical Reference Datasets, Misra1a, certified residual sum of squares.
    expect(fit.cost / 1.2455138894e-1 - 1).toBeLessThan(1e-6);
    return count;
  };
  expect(looks(true)).toBeLessThan(looks(false));
});
