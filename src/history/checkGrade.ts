import { gradeStone, type StoneGrade } from '../grading/gradeStone';
import type { Limits } from '../grading/limits';
import type { MaterialName } from '../grading/materials';
import type { StoneCheck } from './batchHistory';
import { joinFaces } from './joinFaces';

/**
 * Grades a stone at a kept check anew: from all its sides, by the limits of that day.
 *
 * @param seen - The stone at the check.
 * @param material - What the stone is; null when nothing was said, and the check's own material counts.
 */
export function checkGrade({ check, faces }: StoneCheck, material: MaterialName | null): StoneGrade {
  const { step, limits, mmPerPx } = check;
  return gradeStone(joinFaces(faces.map(({ stone }) => stone)), {
    step,
    material: material ?? check.material,
    limits: Object.fromEntries([[step, limits]]) as Limits,
    mmPerPx,
  });
}
