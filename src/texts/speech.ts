import { english } from './english/english';
import type { Language } from './languages';
import type { Texts } from './texts';

/** How the program speaks: its language and the unit of lengths. */
export interface Speech {
  readonly language: Language;
  readonly texts: Texts;
  readonly length: 'mm' | 'inch';
}

let now: Speech = { language: 'en', texts: english, length: 'mm' };
const listeners = new Set<() => void>();

/** How the program speaks now; a new object after each change, so that what was said can be told from what is. */
export const speech = (): Speech => now;

/** Every text in the language spoken now. Not to be kept: another language may be spoken later. */
export const texts = (): Texts => now.texts;

/** Changes how the program speaks, from the next sentence on. */
export function speak(part: Partial<Speech>): void {
  now = { ...now, ...part };
  for (const listener of listeners) listener();
}

/** Calls back after every change; returns what ends it. */
export function onSpeech(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
