/**
 * Value below which a share of the values lies, linear between neighbors.
 *
 * @param values - In any order.
 * @param share - 0 to 1; 0.5 is the median.
 * @returns NaN without values.
 * @see Hyndman & Fan 1996, definition 7, the default of NumPy's `quantile`.
 */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const place = share * (sorted.length - 1);
  const below = sorted[Math.floor(place)] ?? Number.NaN;
  const above = sorted[Math.ceil(place)] ?? Number.NaN;
  return below + (place - Math.floor(place)) * (above - below);
}
