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
  /** Works the derivatives out once, and from then on corrects them by what each step did. */
  readonly corrects?: boolean;
}

/**
 * Fills the array with the residuals of the parameters. `moved` is the only parameter that differs from those of the
 * last call with null, so that what hangs on the others need not be worked out again.
 */
export type Residuals = (parameters: Float64Array, into: Float64Array, moved: number | null) => void;

/**
 * Minimizes a sum of squares by the Levenberg–Marquardt method with forward differences.
 *
 * Derivatives that are only corrected (Broyden's update) take no further look at the residuals: enough where the start
 * is near and the cost is asked for, not where every digit of the parameters counts.
 *
 * @param residuals - Fills the array with the residuals of the parameters.
 * @param count - Number of residuals.
 * @param start - Starting parameters.
 * @param settings - Limits of the search.
 * @returns The best parameters met and their cost; never worse than the start.
 * @see Nocedal and Wright, Numerical Optimization, 2nd ed., sections 10.3 and 11.1.
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
  const { steps, corrects } = settings;
  const columns = steps.map((step) => (step === 0 ? NOTHING : new Float64Array(count)));
  for (let iteration = 0; iteration < settings.maxIterations; iteration++) {
    if (iteration === 0 || !corrects) fillDifferences(residuals, parameters, here, columns, steps);
    const normal = normalEquations(here, columns);
    let gained = 0;
    for (let attempt = 0; attempt < 6; attempt++) {
      const step = dampedStep(normal, damping);
      if (step) {
        const next = parameters.map((value, i) => value + step[i]!);
        residuals(next, there, null);
        if (corrects) correct(columns, here, there, step, steps);
        const nextCost = sumOfSquares(there);
        if (nextCost < cost) {
          gained = (cost - nextCost) / cost;
          parameters = next;
          cost = nextCost;
          [here, there] = [there, here];
          damping = Math.max(1e-9, damping / 5);
          break;
        }
        // What the step told has changed them: the next one is tried with that.
        if (corrects && attempt > 0) break;
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

function fillDifferences(
  residuals: Residuals,
  parameters: Float64Array,
  here: Float64Array,
  columns: readonly Float64Array[],
  steps: readonly number[],
): void {
  columns.forEach((column, i) => {
    if (column === NOTHING) return;
    const moved = Float64Array.from(parameters);
    const step = steps[i]!;
    moved[i]! += step;
    residuals(moved, column, i);
    for (let k = 0; k < column.length; k++) column[k] = (column[k]! - here[k]!) / step;
  });
}

/** Makes derivatives agree with what a step did, and changes them as little as that takes, in units of `steps`. */
function correct(
  columns: readonly Float64Array[],
  before: Float64Array,
  after: Float64Array,
  step: Float64Array,
  steps: readonly number[],
): void {
  const moved = [...columns.keys()].filter((i) => columns[i] !== NOTHING);
  const length2 = moved.reduce((sum, i) => sum + (step[i]! / steps[i]!) ** 2, 0);
  if (!(length2 > 0)) return;
  const wrong = after.map((value, k) => value - before[k]!);
  for (const i of moved) addTimes(wrong, -step[i]!, columns[i]!);
  if (!wrong.every(Number.isFinite)) return;
  for (const i of moved) addTimes(columns[i]!, step[i]! / (steps[i]! ** 2 * length2), wrong);
}

function addTimes(sums: Float64Array, factor: number, values: Float64Array): void {
  for (let k = 0; k < sums.length; k++) sums[k]! += factor * values[k]!;
}

function normalEquations(here: Float64Array, columns: readonly Float64Array[]): NormalEquations {
  const n = columns.length;
  const matrix = new Float64Array(n * n);
  const gradient = new Float64Array(n);
  const moved = [...columns.keys()].filter((i) => columns[i] !== NOTHING);
  moved.forEach((i, k) => {
    gradient[i] = dot(columns[i]!, here);
    // Four sums in one pass: each waits for its own last addition only.
    for (let m = 0; m <= k; m += 4) {
      const others = [0, 1, 2, 3].map((d) => moved[Math.min(k, m + d)]!) as [number, number, number, number];
      const [a, b, c, d] = others;
      const sums = fourDots(columns[i]!, columns[a]!, columns[b]!, columns[c]!, columns[d]!);
      others.forEach((j, at) => {
        matrix[i * n + j] = sums[at]!;
      });
    }
  });
  return { matrix, gradient };
}

function fourDots(column: Float64Array, a: Float64Array, b: Float64Array, c: Float64Array, d: Float64Array) {
  let withA = 0;
  let withB = 0;
  let withC = 0;
  let withD = 0;
  for (let i = 0; i < column.length; i++) {
    const value = column[i]!;
    withA += value * a[i]!;
    withB += value * b[i]!;
    withC += value * c[i]!;
    withD += value * d[i]!;
  }
  return [withA, withB, withC, withD] as const;
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
