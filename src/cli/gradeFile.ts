import { analyzePhoto } from '../analysis/analyzePhoto';
import type { AnalysisOptions } from '../analysis/options';
import type { PhotoReport } from '../analysis/report';
import { gradeStone, type StoneGrade } from '../grading/gradeStone';
import type { MaterialName } from '../grading/materials';
import type { Step } from '../grading/steps';
import { Refusal } from '../image/notice';
import type { Photo } from '../image/photo';
import type { OpenCv } from '../vision/openCv';
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
}

/** Measures and grades one photo file, with the same modules as the page. */
export async function gradeFile(path: string, options: GradeFileOptions, cv: OpenCv): Promise<GradedFile> {
  const { step, material, ballMm, ballAt, rig } = options;
  try {
    const photo = await decodeFile(path);
    const report = await analyzePhoto(photo, { ballMm, ballAt, rig }, cv, () => {});
    const settings = { step, material, limits: null, mmPerPx: report.mmPerPx };
    const grades = report.stones.map((stone) => gradeStone(stone, settings));
    return { entry: gradedEntry(path, report, grades), photo, report, grades };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { entry: refusedEntry(path, error), photo: null, report: null, grades: null };
  }
}
