/** Number words of both languages; "one" is left out, since it is also an article or stands for a noun. */
const NUMBER_WORDS: readonly (readonly [RegExp, number])[] = [
  [/^(half|halbe?|hälfte)$/, 0.5],
  [/^(two|zwei|second|zweite[ns]?|twice|doppelt|zweimal)$/, 2],
  [/^(three|drei)$/, 3],
  [/^(four|vier)$/, 4],
  [/^(five|fünf)$/, 5],
  [/^(six|sechs)$/, 6],
  [/^(seven|sieben)$/, 7],
  [/^(eight|acht)$/, 8],
  [/^(nine|neun)$/, 9],
  [/^(ten|zehn)$/, 10],
  [/^(twelve|zwölf)$/, 12],
];

/** Every number of an English or German sentence but one, in digits or in words, the smallest first. */
export function numbersIn(sentence: string): number[] {
  const words = sentence.toLowerCase().match(/\p{L}+|\d+(?:[.,]\d+)?/gu) ?? [];
  return words
    .flatMap((word) => {
      if (/^\d/.test(word)) return [Number(word.replace(',', '.'))];
      return NUMBER_WORDS.flatMap(([written, value]) => (written.test(word) ? [value] : []));
    })
    .sort((one, other) => one - other);
}
