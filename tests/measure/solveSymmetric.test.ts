import { expect, it } from 'vitest';
import { solveSymmetric } from '../../src/measure/solveSymmetric';
import golden from '../golden/measure.json';
import { largestDifference } from '../helpers/largestDifference';

it('solves two equations one can solve by hand', () => {
  // 4x + 2y = 2 and 2x + 3y = 5 at x = −½, y = 2.
  const x = solveSymmetric(Float64Array.of(4, 2, 2, 3), Float64Array.of(2, 5))!;
  expect(largestDifference(x, [-0.5, 2])).toBeLessThan(1e-14);
});

// Source: SciPy 1.10 linalg.solve, tests/golden/measure.py; the last one is the ill-conditioned 4 × 4 Hilbert matrix.
it("gives SciPy's solutions", () => {
  for (const [matrix, right, x] of golden.solve.rows as [number[], number[], number[]][]) {
    const solved = solveSymmetric(Float64Array.from(matrix), Float64Array.from(right))!;
    expect(largestDifference(solved, x)).toBeLessThan(
      golden.tolerance.solve * Math.max(1, ...x.map(Math.abs)),
    );
  }
});

it('reads the lower triangle only and leaves its arguments alone', () => {
  const matrix = Float64Array.of(4, 99, 2, 3);
  const right = Float64Array.of(2, 5);
  expect(largestDifference(solveSymmetric(matrix, right)!, [-0.5, 2])).toBeLessThan(1e-14);
  expect([...matrix, ...right]).toEqual([4, 99, 2, 3, 2, 5]);
});

it('has no answer for a matrix that is not positive definite', () => {
  expect(solveSymmetric(Float64Array.of(1, 2, 2, 1), Float64Array.of(1, 1))).toBeNull();
  expect(solveSymmetric(Float64Array.of(1, 1, 1, 1), Float64Array.of(1, 1))).toBeNull();
  expect(solveSymmetric(Float64Array.of(Number.NaN), Float64Array.of(1))).toBeNull();
});
