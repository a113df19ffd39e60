/** Gaussian blur by direct sums, cut off at five standard deviations; beyond the picture its edge goes on. */
export function pointSpread(
  values: Float64Array,
  width: number,
  height: number,
  sigma: number,
): Float64Array {
  if (sigma === 0) return values;
  const reach = Math.ceil(5 * sigma);
  const bell = Array.from({ length: 2 * reach + 1 }, (_, k) =>
    Math.exp(-((k - reach) ** 2) / (2 * sigma * sigma)),
  );
  const total = bell.reduce((sum, value) => sum + value, 0);
  const pass = (
    from: Float64Array,
    count: number,
    stride: number,
    first: (line: number) => number,
    lines: number,
  ) => {
    const into = new Float64Array(from.length);
    for (let line = 0; line < lines; line++) {
      for (let i = 0; i < count; i++) {
        let sum = 0;
        for (let k = -reach; k <= reach; k++) {
          sum += bell[k + reach]! * from[first(line) + Math.min(count - 1, Math.max(0, i + k)) * stride]!;
        }
        into[first(line) + i * stride] = sum / total;
      }
    }
    return into;
  };
  const rows = pass(values, width, 1, (line) => line * width, height);
  return pass(rows, height, width, (line) => line, width);
}
