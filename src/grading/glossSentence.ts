import type { Gloss } from './gloss';
import { plainNumber } from './plainNumber';

/** A 60° reading with its interval, to be set into a sentence: "24 gloss units at 60° (20 to 29)". */
export function glossSentence({ gu60, gu60Low, gu60High }: Gloss): string {
  return `${plainNumber(gu60)} gloss units at 60° (${plainNumber(gu60Low)} to ${plainNumber(gu60High)})`;
}
