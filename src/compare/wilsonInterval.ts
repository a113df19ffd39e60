/** Half of a 95 % interval of a normal distribution, standard deviations. */
const Z = 1.959963985;

/**
 * 95 % interval of a share that was counted.
 *
 * @param hits - How many of them, 0 to `count`.
 * @param count - How many there were, 1 or more.
 * @returns Ends between 0 and 1.
 * @throws RangeError if hits lie outside 0 to count, or nothing was counted.
 * @see Wilson 1927, "Probable inference, the law of succession, and statistical inference"; recommended for small
 * counts by Brown, Cai & DasGupta 2001.
 */
export function wilsonInterval(hits: number, count: number): readonly [low: number, high: number] {
  if (!(count >= 1 && hits >= 0 && hits <= count)) {
    throw new RangeError(`A share needs 0 to ${count} hits of at least 1, not ${hits}.`);
  }
  const share = hits / count;
  const weight = (Z * Z) / count;
  const middle = share + weight / 2;
  const reach = Math.sqrt(weight * (share * (1 - share) + weight / 4));
  return [
    hits === 0 ? 0 : (middle - reach) / (1 + weight),
    hits === count ? 1 : (middle + reach) / (1 + weight),
  ];
}
