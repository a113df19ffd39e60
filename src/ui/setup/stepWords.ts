import type { Step } from '../../grading/steps';

/** Short names that fit a fifth of a phone's width. */
export const STEP_WORDS: Readonly<Record<Step, string>> = {
  coarse: 'coarse',
  medium: 'medium',
  fine: 'fine',
  prepolish: 'pre-polish',
  polish: 'polish',
};
