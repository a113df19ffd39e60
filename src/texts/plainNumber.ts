import { texts } from './speech';

/**
 * A number as one would say it at the bench: two digits, no more.
 *
 * @param value - Any finite number.
 * @returns "0.05", "0.5", "3.1", "11", "240", with the decimal mark of the language; no exponent, no trailing zeros.
 */
export function plainNumber(value: number): string {
  const size = Math.abs(value);
  const decimals = size >= 10 || size === 0 ? 0 : size >= 0.995 ? 1 : 2;
  return withDecimalMark(String(Number(value.toFixed(decimals))));
}

/** Writes a number that has been rounded already with the decimal mark of the language. */
export function withDecimalMark(rounded: string): string {
  return rounded.replace('.', texts().measures.decimalMark);
}
