import type { PhotoReport } from '../analysis/report';
import { type Contamination, contamination } from '../grading/contamination';
import { gradeStone, type StoneGrade } from '../grading/gradeStone';
import type { Settings } from './settings';

/** A report and what its stones were graded under the present choices. */
export interface GradedPhoto {
  readonly report: PhotoReport;
  readonly grades: readonly StoneGrade[];
  /** What fresh scratches tell of the batch; null when there are none, or the step itself scratches. */
  readonly contamination: Contamination | null;
}

type Choices = Pick<Settings, 'step' | 'material' | 'limits'>;

const last = new WeakMap<PhotoReport, { readonly choices: Choices; readonly graded: GradedPhoto }>();

/**
 * Grades all stones of a report; nothing is measured anew.
 *
 * @returns The same object as before while report and choices are the same, so that nothing is redrawn in vain.
 */
export function gradePhoto(report: PhotoReport, choices: Choices): GradedPhoto {
  const { step, material, limits } = choices;
  const kept = last.get(report);
  const same =
    kept?.choices.step === step && kept.choices.material === material && kept.choices.limits === limits;
  if (kept !== undefined && same) return kept.graded;
  const grades = report.stones.map((stone) =>
    gradeStone(stone, { step, material, limits, mmPerPx: report.mmPerPx }),
  );
  const graded = { report, grades, contamination: contamination(report.stones, step, limits) };
  last.set(report, { choices: { step, material, limits }, graded });
  return graded;
}
