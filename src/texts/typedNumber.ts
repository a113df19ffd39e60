import { texts } from './speech';

/**
 * A number as people type it, whatever their keyboard and language write as the decimal mark: "5.4" and "5,4" are the
 * same. Browsers' own number fields drop the mark of another language, so that "5,4" becomes 54.
 *
 * @param typed - What stands in a field.
 * @returns A number, ≥ 0; null for none: nothing, other signs, or what may mean two numbers, such as "1,250" in English.
 */
export function typedNumber(typed: string): number | null {
  const text = typed.trim();
  if (!/^(\d+([.,]\d*)?|[.,]\d+)$/.test(text) || mayBeGrouped(text)) return null;
  return Number(text.replace(',', '.'));
}

/** Three digits behind the mark that the language parts thousands with: "1,250" in English, "1.250" in German. */
function mayBeGrouped(text: string): boolean {
  const other = texts().measures.decimalMark === '.' ? ',' : '.';
  return /^[1-9]\d{0,2}[.,]\d{3}$/.test(text) && text.includes(other);
}
