/** A number as SVG writes it, to two decimals and without trailing zeros; 0 for one that is none or without end. */
export function svgNumber(value: number): string {
  if (!Number.isFinite(value)) return '0';
  return String(Math.round(value * 100) / 100);
}
