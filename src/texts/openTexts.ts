import { english } from './english/english';
import type { Language } from './languages';
import type { Texts } from './texts';

/** Gives the texts of a language; any but English are fetched when they are first spoken. */
export async function openTexts(language: Language): Promise<Texts> {
  if (language === 'en') return english;
  return (await import('./german/german')).german;
}
