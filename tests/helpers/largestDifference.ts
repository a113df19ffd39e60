/** Largest difference between values and their reference; infinite when there are not equally many. */
export function largestDifference(values: ArrayLike<number>, reference: readonly number[]): number {
  if (values.length !== reference.length) return Number.POSITIVE_INFINITY;
  return reference.reduce(
    (largest, expected, i) => Math.max(largest, Math.abs(expected - (values[i] ?? Number.NaN))),
    0,
  );
}
