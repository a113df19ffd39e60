import { useSyncExternalStore } from 'react';
import { onSpeech, type Speech, speech } from '../texts/speech';

/** Draws a part of the page anew when the language or the unit of lengths changes. */
export function useSpeech(): Speech {
  return useSyncExternalStore(onSpeech, speech);
}
