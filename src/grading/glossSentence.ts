import { plainNumber } from '../texts/plainNumber';
import { texts } from '../texts/speech';
import type { Gloss } from './gloss';

/** A 60° reading with its interval, to be set into a sentence: "24 gloss units at 60° (20 to 29)". */
export function glossSentence({ gu60, gu60Low, gu60High }: Gloss): string {
  return texts().verdicts.reasons.reading(plainNumber(gu60), plainNumber(gu60Low), plainNumber(gu60High));
}
