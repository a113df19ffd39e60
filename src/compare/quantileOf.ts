/**
 * Value below which a share of the values lies, linear between neighbors.
 *
 * @param sorted - From the least to the greatest.
 * @param share - 0 to 1; 0.5 is the median.
 * @returns NaN without values.
 * @see Hyndman & Fan 1996, definition 7.
 */
export function quantileOf(sorted: readonly number[], share: number): number {
  const place = share * (sorted.length - 1);
  const below = sorted[Math.floor(place)] ?? Number.NaN;
  const above = sorted[Math.ceil(place)] ?? Number.NaN;
  return below === above ? below : below + (place - Math.floor(place)) * (above - below);
}
