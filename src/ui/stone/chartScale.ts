/** Turns values into places along an axis of a chart. */
export type AxisScale = (value: number) => number;

/**
 * A linear axis.
 *
 * @param from - Values at the two ends of the axis; equal ends put every value at the first place.
 * @param to - Places of those ends.
 */
export function axisScale(from: readonly [number, number], to: readonly [number, number]): AxisScale {
  const span = from[1] - from[0];
  return (value) => (span === 0 ? to[0] : to[0] + ((value - from[0]) / span) * (to[1] - to[0]));
}

/**
 * Round values to mark along an axis.
 *
 * @param most - End of the axis, > 0; it begins at 0.
 * @param count - About how many marks are wanted.
 * @returns Multiples of 1, 2 or 5 times a power of ten from 0 to `most`.
 */
export function roundMarks(most: number, count: number): number[] {
  const rough = most / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((factor) => factor * power).find((candidate) => candidate >= rough) ?? rough;
  return Array.from({ length: Math.floor(most / step + 1e-9) + 1 }, (_, index) =>
    Number((index * step).toFixed(9)),
  );
}
