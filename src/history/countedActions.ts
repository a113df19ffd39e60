import type { Action } from '../grading/opinion';
import type { CheckRecord } from '../journal/records';

/** Stones of a photo by what was advised. */
export function countedActions({ stones }: CheckRecord): Partial<Record<Action, number>> {
  const counts: Partial<Record<Action, number>> = {};
  for (const { action } of stones) counts[action] = (counts[action] ?? 0) + 1;
  return counts;
}
