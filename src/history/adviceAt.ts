import type { Action } from '../grading/opinion';
import type { StoneCheck } from './batchHistory';
import { checkGrade } from './checkGrade';

/** What was advised at a check: of a single side as it was said that day; several sides are graded together. */
export function adviceAt(seen: StoneCheck): Action {
  return seen.faces.length === 1 ? seen.faces[0].stone.action : checkGrade(seen, null).verdict.action;
}
