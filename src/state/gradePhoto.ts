import type { PhotoReport } from '../analysis/report';
import { type Contamination, contamination } from '../grading/contamination';
import { gradeStone, type StoneGrade } from '../grading/gradeStone';
import { type Speech, speech } from '../texts/speech';
import type { Settings } from './settings';

/** A report and what its stones were graded under the present choices. */
export interface GradedPhoto {
  readonly report: PhotoReport;
  readonly grades: readonly StoneGrade[];
  /** What fresh scratches tell of the batch; null when there are none, or the step itself scratches. */
  readonly contamination: Contamination | null;
}

type Choices = Pick<Settings, 'step' | 'material' | 'limits'>;

interface Kept {
  readonly choices: Choices;
  /** What the reasons were said in. */
  readonly saidIn: Speech;
  readonly graded: GradedPhoto;
}

const last = new WeakMap<PhotoReport, Kept>();

/**
 * Grades all stones of a report; nothing is measured anew.
 *
 * @returns The same object as before while report, choices and language are the same, so that nothing is redrawn in vain.
 */
export function gradePhoto(report: PhotoReport, choices: Choices): GradedPhoto {
  const { step, material, limits } = choices;
  const kept = last.get(report);
  const same =
    kept?.choices.step === step &&
    kept.choices.material === material &&
    kept.choices.limits === limits &&
    kept.saidIn === speech();
  if (kept !== undefined && same) return kept.graded;
  const grades = report.stones.map((stone) =>
    gradeStone(stone, { step, material, limits, mmPerPx: report.mmPerPx }),
  );
  const graded = { report, grades, contamination: contamination(report.stones, step, limits) };
  last.set(report, { choices: { step, material, limits }, saidIn: speech(), graded });
  return graded;
}
