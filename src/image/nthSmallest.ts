/**
 * The value that would stand at a place if the values were sorted; they are only brought as far as that takes.
 *
 * @param values - Reordered: none before the place is larger, none after it smaller. No value may be NaN.
 * @param place - Whole number, 0 for the smallest.
 * @returns The value; undefined when there is no such place.
 * @see Hoare 1961, "Algorithm 65: Find", Communications of the ACM 4(7).
 */
export function nthSmallest(values: Float32Array | Float64Array, place: number): number | undefined {
  let first = 0;
  let last = values.length - 1;
  if (place < 0 || place > last) return undefined;
  while (first < last) {
    const pivot = values[place]!;
    let i = first;
    let j = last;
    while (i <= j) {
      while (values[i]! < pivot) i++;
      while (pivot < values[j]!) j--;
      if (i > j) break;
      const moved = values[i]!;
      values[i++] = values[j]!;
      values[j--] = moved;
    }
    if (j < place) first = i;
    if (place < i) last = j;
  }
  return values[place];
}
