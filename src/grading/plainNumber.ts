/**
 * A number as one would say it at the bench: two digits, no more.
 *
 * @param value - Any finite number.
 * @returns "0.05", "0.5", "3.1", "11", "240"; no exponent and no trailing zeros.
 */
export function plainNumber(value: number): string {
  const size = Math.abs(value);
  const decimals = size >= 10 || size === 0 ? 0 : size >= 0.995 ? 1 : 2;
  return String(Number(value.toFixed(decimals)));
}
