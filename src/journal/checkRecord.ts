import type { PhotoReport, PixelPoint } from '../analysis/report';
import type { StoneGrade } from '../grading/gradeStone';
import type { StepLimits } from '../grading/limits';
import type { MaterialName } from '../grading/materials';
import type { Step } from '../grading/steps';
import type { CheckedStone, CheckRecord, Day, RecordId } from './records';

/** What is known of a check beside its measurement. */
export interface CheckSetting {
  readonly id: RecordId;
  readonly batch: RecordId;
  /** The check whose stones this photo shows from another side; null for a check's first photo. */
  readonly faceOf: RecordId | null;
  readonly step: Step;
  readonly material: MaterialName | null;
  readonly limits: StepLimits;
  readonly day: Day;
  /** Key of the photo among the journal's photos; null when it is not kept. */
  readonly photo: string | null;
}

/**
 * A measured and graded photo as a record.
 *
 * @param report - The measurement.
 * @param grades - One grade for each of its stones, in the same order.
 */
export function checkRecord(
  setting: CheckSetting,
  report: PhotoReport,
  grades: readonly StoneGrade[],
): CheckRecord {
  const stones = report.stones.map((stone, i): CheckedStone => {
    const grade = grades[i]!;
    const { gloss } = grade;
    return {
      place: stone.id,
      outline: stone.outline.map(toTenths),
      lengthMm: stone.lengthMm,
      widthMm: stone.widthMm,
      areaMm2: stone.areaMm2,
      cutOff: stone.cutOff,
      inspectedCm2: stone.inspectedCm2,
      flaws: stone.flaws.map(({ path: _, followsLamp: __, ...flaw }) => flaw),
      highlight: stone.highlight && { byIndex: stone.highlight.byIndex },
      glossBound: stone.glossBound,
      ...(stone.glossWithheld === undefined ? {} : { glossWithheld: stone.glossWithheld }),
      ...(stone.unlike === undefined ? {} : { unlike: stone.unlike }),
      gloss: gloss && {
        alpha: gloss.alpha,
        alphaLow: gloss.alphaLow,
        alphaHigh: gloss.alphaHigh,
        gu60: gloss.gu60,
        gu60Low: gloss.gu60Low,
        gu60High: gloss.gu60High,
      },
      smoothness: grade.smoothness,
      action: grade.verdict.action,
      reasons: grade.verdict.reasons,
      look: stone.look,
    };
  });
  const longestPx = Math.max(report.widthPx, report.heightPx);
  return { kind: 'check', ...setting, mmPerPx: report.mmPerPx, longestPx, stones };
}

/** Outlines are good to a pixel or so, and make up most of a record. */
const toTenths = ([row, column]: PixelPoint): PixelPoint => [
  Math.round(10 * row) / 10,
  Math.round(10 * column) / 10,
];
