import type { Action } from '../../grading/opinion';

/** What to do with the stones of a group; their numbers follow. */
export const ACTION_ERRANDS: Readonly<Record<Action, string>> = {
  finished: 'Done. Take these out:',
  advance: 'Ready for the next step. Pick out these:',
  repeat: 'Same step once more. Leave these in:',
  'back-to-coarse': 'Flaws too deep for this step. Pull these back:',
  'set-aside': 'Grinding on will not help. Lay these aside and decide:',
  'look-closer': 'The photo cannot tell. Look at these by hand:',
};
