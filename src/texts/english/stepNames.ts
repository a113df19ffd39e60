import type { Step } from '../../grading/steps';

/** Steps within a sentence. */
export const stepsWithin = {
  coarse: 'coarse',
  medium: 'medium',
  fine: 'fine',
  prepolish: 'pre-polish',
  polish: 'polish',
} as const;

export const grits = {
  coarse: '60/90 silicon carbide',
  medium: '220 silicon carbide',
  fine: '600 silicon carbide',
  prepolish: '1500 silicon carbide',
  polish: 'aluminum oxide polish',
} as const;

/**
 * Where scratched stones go on, as the end of a sentence.
 *
 * @param step - Step they go back to; null for this one once more.
 */
export const wayBack = (step: Step | null) =>
  step === null ? 'repeat this step' : `go back to the ${stepsWithin[step]} step`;
