/** Letters read from right to left, and marks that would turn the direction of what follows. */
const TURNS =
  /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}\p{Script=Adlam}\u200e\u200f\u202a-\u202e\u2066-\u2069]/u;
const MARKS = /[\u202a-\u202e\u2066-\u2069]/g;

/**
 * The owner's words for the middle of a sentence, so that they keep their own direction and change no one else's: numbers
 * and brackets behind a Hebrew name stay where the sentence has them. Where words stand alone, `styles/names.css` does it.
 *
 * @param words - A name, source or charge, of any script.
 * @returns Words that turn nothing as they are; others between FIRST STRONG ISOLATE and POP DIRECTIONAL ISOLATE, without
 *   such marks of their own. For the screen only: files get the words themselves.
 * @see Unicode Standard Annex 9, sections 2.4 and 2.6.
 */
export function ownWords(words: string): string {
  return TURNS.test(words) ? `\u2068${words.replaceAll(MARKS, '')}\u2069` : words;
}
