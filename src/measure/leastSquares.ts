import { solveSymmetric } from './solveSymmetric';

/** Where a fit ended. */
export interface Fit {
  readonly parameters: Float64Array;
  /** Sum of squared residuals there. */
  readonly cost: number;
}

/** Limits of the search. */
export interface FitSettings {
  /** Steps used for the numeric derivatives, one per parameter; 0 holds a parameter fixed. */
  readonly steps: readonly number[];
  readonly maxIterations: number;
  /** Stop when an iteration lowers the cost by less than this share. */
  readonly tolerance: number;
}

/**
 * Fills the array with the residuals of the parameters. `moved` is the only parameter that differs from those of the
 * last call with null, so that what hangs on the others need not be worked out again.
 */
export type Residuals = (parameters: Float64Array, into: Float64Array, moved: number | null) => void;

/**
 * Minimizes a sum of squares by the Levenberg–Marquardt method with forward differences.
 *
 * @param residuals - Fills the array with the residuals of the parameters.
 * @param count - Number of residuals.
 * @param start - Starting parameters.
 * @param settings - Limits of the search.
 * @returns The best parameters met and their cost; never worse than the start.
 * @see Nocedal and Wright, Numerical Optimization, 2nd ed., section 10.3.
 */
export function leastSquares(
  residuals: Residuals,
  count: number,
  start: ArrayLike<number>,
  settings: FitSettings,
): Fit {
  let parameters = Float64Array.from(start);
  let here = new Float64Array(count);
  let there = new Float64Array(count);
  residuals(parameters, here, null);
  let cost = sumOfSquares(here);
  let damping = 1e-2;
  const columns = settings.steps.map((step) => (step === 0 ? NOTHING : new Float64Array(count)));
  for (let iteration = 0; iteration < settings.maxIterations; iteration++) {
    const normal = normalEquations(residuals, parameters, here, columns, settings.steps);
    let gained = 0;
    for (let attempt = 0; attempt < 6; attempt++) {
      const step = dampedStep(normal, damping);
      if (step) {
        const next = parameters.map((value, i) => value + step[i]!);
        residuals(next, there, null);
        const nextCost = sumOfSquares(there);
        if (nextCost < cost) {
          gained = (cost - nextCost) / cost;
          parameters = next;
          cost = nextCost;
          [here, there] = [there, here];
          damping = Math.max(1e-9, damping / 5);
          break;
        }
      }
      damping *= 6;
    }
    if (gained <= settings.tolerance) break;
  }
  return { parameters, cost };
}

interface NormalEquations {
  readonly matrix: Float64Array;
  readonly gradient: Float64Array;
}

/** Stands for the derivatives by a parameter that is held fixed. */
const NOTHING = new Float64Array(0);

function normalEquations(
  residuals: Residuals,
  parameters: Float64Array,
  here: Float64Array,
  columns: readonly Float64Array[],
  steps: readonly number[],
): NormalEquations {
  const n = parameters.length;
  columns.forEach((column, i) => {
    if (column === NOTHING) return;
    const moved = Float64Array.from(parameters);
    const step = steps[i]!;
    moved[i]! += step;
    residuals(moved, column, i);
    for (let k = 0; k < column.length; k++) column[k] = (column[k]! - here[k]!) / step;
  });
  const matrix = new Float64Array(n * n);
  const gradient = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    if (columns[i] === NOTHING) continue;
    gradient[i] = dot(columns[i]!, here);
    for (let j = 0; j <= i; j++)
      if (columns[j] !== NOTHING) matrix[i * n + j] = dot(columns[i]!, columns[j]!);
  }
  return { matrix, gradient };
}

function dampedStep({ matrix, gradient }: NormalEquations, damping: number): Float64Array | null {
  const n = gradient.length;
  const damped = Float64Array.from(matrix);
  for (let i = 0; i < n; i++) {
    const diagonal = matrix[i * n + i]!;
    damped[i * n + i] = diagonal > 0 ? diagonal * (1 + damping) : 1;
  }
  return solveSymmetric(
    damped,
    gradient.map((value) => -value),
  );
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

function sumOfSquares(values: Float64Array): number {
  const sum = dot(values, values);
  return Number.isFinite(sum) ? sum : Number.POSITIVE_INFINITY;
}
