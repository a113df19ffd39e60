/** What can be done with a stone, from the best news to the worst. */
export const ACTIONS_BEST_FIRST = [
  'finished',
  'advance',
  'look-closer',
  'repeat',
  'back-to-coarse',
  'set-aside',
] as const;

export type Action = (typeof ACTIONS_BEST_FIRST)[number];

/** What one rule would do with a stone, and the sentence it gives. */
export interface Opinion {
  readonly action: Action;
  readonly reason: string;
}
