import { help } from './english/help';
import type { Language } from './languages';
import type { HelpTexts } from './texts';

/**
 * Gives the texts of the help page in a language. They are a catalog of their own, typed as the others are: only the
 * help page, which is itself fetched when it is first opened, imports this module, so that no other screen waits for so
 * many words. The English ones come with that page; any others are fetched when they are first spoken there.
 */
export async function openHelpTexts(language: Language): Promise<HelpTexts> {
  if (language === 'en') return help;
  return (await import('./german/help')).help;
}
