import { use } from 'react';
import type { Language } from '../../texts/languages';
import { openHelpTexts } from '../../texts/openHelpTexts';
import type { HelpTexts } from '../../texts/texts';
import { useSpeech } from '../useSpeech';

const opened = new Map<Language, Promise<HelpTexts>>();

/**
 * The help page's texts in the language spoken now; whoever draws waits until they are there. English ones stand in for
 * those that cannot be fetched.
 */
export function useHelpTexts(): HelpTexts {
  const { language } = useSpeech();
  const texts = opened.get(language) ?? openHelpTexts(language).catch(() => openHelpTexts('en'));
  opened.set(language, texts);
  return use(texts);
}
