import { analyzeShots } from '../analysis/analyzeShots';
import type { AnalysisOptions } from '../analysis/options';
import type { PhotoReport } from '../analysis/report';
import { contamination } from '../grading/contamination';
import { gradeStone, type StoneGrade } from '../grading/gradeStone';
import type { MaterialName } from '../grading/materials';
import type { Step } from '../grading/steps';
import { Refusal } from '../image/notice';
import type { Photo } from '../image/photo';
import type { Engines } from '../vision/openEngines';
import { decodeFile } from './decodeFile';
import { gradedEntry, type PhotoEntry, refusedEntry } from './photoEntry';

export interface GradedFile {
  readonly entry: PhotoEntry;
  /** These three are null when the photo was refused. */
  readonly photo: Photo | null;
  readonly report: PhotoReport | null;
  readonly grades: readonly StoneGrade[] | null;
}

export interface GradeFileOptions extends AnalysisOptions {
  readonly step: Step;
  readonly material: MaterialName | null;
  /** A photo of the same tray with the lamp elsewhere; null for none. */
  readonly lampMovedFile: string | null;
}

/**
 * Measures and grades one scene, with the same modules as the page.
 *
 * @param paths - One photo file, or several shots of one scene at different exposures.
 */
export async function gradeFile(
  paths: readonly [string, ...string[]],
  options: GradeFileOptions,
  engines: Engines,
): Promise<GradedFile> {
  const { step, material, lampMovedFile, ballMm, ballAt, rig } = options;
  try {
    const [first, ...others] = paths;
    const photo = await decodeFile(first);
    const shots: [Photo, ...Photo[]] = [photo];
    for (const path of others) shots.push(await decodeFile(path));
    const moved = lampMovedFile === null ? null : await decodeFile(lampMovedFile);
    const report = await analyzeShots(shots, { ballMm, ballAt, rig }, engines, () => {}, moved);
    const settings = { step, material, limits: null, mmPerPx: report.mmPerPx };
    const grades = report.stones.map((stone) => gradeStone(stone, settings));
    const scratched = contamination(report.stones, step, null);
    return { entry: gradedEntry(paths, report, grades, scratched), photo, report, grades };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { entry: refusedEntry(paths, error), photo: null, report: null, grades: null };
  }
}
