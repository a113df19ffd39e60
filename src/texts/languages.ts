/** Languages the program speaks, each by its own name. Tags: BCP 47. */
export const LANGUAGES = { en: 'English', de: 'Deutsch' } as const;

export type Language = keyof typeof LANGUAGES;

/** Takes over a kept choice; null, which is "as the browser", for anything else. */
export function checkedLanguage(kept: unknown): Language | null {
  return typeof kept === 'string' && Object.hasOwn(LANGUAGES, kept) ? (kept as Language) : null;
}

/**
 * The language to speak.
 *
 * @param chosen - What the owner chose; null for "as the browser".
 * @param wished - Language tags a browser gives, the dearest first, such as "de-AT".
 * @returns The choice; else the first of the wished ones that is spoken; else English.
 */
export function languageFor(chosen: Language | null, wished: readonly string[]): Language {
  const heard = wished
    .map((tag) => checkedLanguage(tag.toLowerCase().split('-')[0]))
    .find((one) => one !== null);
  return chosen ?? heard ?? 'en';
}
