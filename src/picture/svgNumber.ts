/** A number as SVG writes it, to two decimals and without trailing zeros. */
export function svgNumber(value: number): string {
  return String(Math.round(value * 100) / 100);
}
