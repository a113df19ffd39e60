/**
 * Names in a row: "a", "a and b", "a, b and c".
 *
 * @param names - As they are to be read; none gives an empty text.
 * @param and - The language's word before the last one.
 */
export function listed(names: readonly string[], and: string): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} ${and} ${names.at(-1)}`;
}
