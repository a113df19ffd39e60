import { texts } from '../texts/speech';
import type { Opinion } from './opinion';

/** What is said of a stone whose gloss was not read because lamp or camera moved, or a second light shone on it. */
export function withheldOpinion(why: true | 'second-light' = true): Opinion {
  const { secondLight, rigMoved } = texts().verdicts.reasons;
  return { action: 'look-closer', reason: why === 'second-light' ? secondLight : rigMoved };
}
