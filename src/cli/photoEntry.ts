import type {
  BallReport,
  DullPatchReport,
  FlawReport,
  LightReport,
  PhotoReport,
  PixelPoint,
  StoneReport,
  WavinessReport,
} from '../analysis/report';
import type { Contamination } from '../grading/contamination';
import type { Gloss } from '../grading/gloss';
import type { StoneGrade } from '../grading/gradeStone';
import { type ShineFigures, shineFigures } from '../grading/shineFigures';
import type { Refusal, RefusalCode, Warning } from '../image/notice';

/** One photo in the JSON that the command writes: other programs rely on every name in it. */
export interface PhotoEntry {
  readonly file: string;
  readonly refused: { readonly code: RefusalCode; readonly message: string } | null;
  readonly warnings: readonly Warning[];
  readonly widthPx: number | null;
  readonly heightPx: number | null;
  readonly mmPerPx: number | null;
  readonly ball: BallReport | null;
  readonly light: LightReport | null;
  readonly stones: readonly StoneEntry[];
  /** The files of all shots of the scene, `file` first; and the light in each as a share of the first, or null. */
  readonly exposures: readonly string[];
  readonly exposureRatios: readonly number[] | null;
  /** Stones and ball found in a second photo with the lamp elsewhere, and the tray's turn in degrees; null without one. */
  readonly lampMoved: PhotoReport['lampMoved'] | null;
  /** What fresh scratches tell of the batch; null when there are none, or the step itself scratches. */
  readonly contamination: Contamination | null;
}

export interface StoneEntry {
  readonly id: number;
  readonly center: PixelPoint;
  readonly outline: readonly PixelPoint[];
  readonly areaMm2: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly gloss: GlossEntry | null;
  /** What a stone without a gloss reading has at most; null when its gloss is known or nothing can be said. */
  readonly glossAtMost: { readonly gu60: number } | null;
  readonly flaws: readonly FlawReport[];
  readonly pitsPerCm2: StoneGrade['pitsPerCm2'];
  readonly fractureMm: StoneGrade['fractureMm'];
  readonly smoothness: StoneGrade['smoothness'];
  readonly verdict: Pick<StoneGrade['verdict'], 'action' | 'reasons'>;
  /** How even the skin is where it mirrors the lamp; null where the photo does not tell. */
  readonly waviness: WavinessReport | null;
  readonly dullPatches: readonly DullPatchReport[] | null;
  readonly furtherGloss: StoneGrade['furtherGloss'];
  /** Surface looked at for flaws, cm²; and its pits in the classes of ASTM G46. */
  readonly inspectedCm2: number;
  readonly pitRating: StoneGrade['pitRating'];
}

/** Gloss and what follows from it; fields were only ever added, at the end. */
export type GlossEntry = Pick<
  Gloss,
  'alpha' | 'alphaLow' | 'alphaHigh' | 'gu60' | 'gu20' | 'finish' | 'ceilingGu60'
> &
  Pick<Gloss, 'gu85' | 'gu60Low' | 'gu60High' | 'level' | 'shareOfCeiling'> &
  Pick<
    ShineFigures,
    'imageClarity' | 'distinctnessOfImage' | 'haze' | 'haze30' | 'contrast' | 'distinctness'
  > & {
    /** Share of light that the stone itself sends back; null when it was not seen. */
    readonly bodyReflectance: number | null;
  };

/** The files of one scene: a photo, or several shots of it. */
type Files = readonly [string, ...string[]];

/** The entry of a photo that was graded; `grades` has one grade per stone, in the same order. */
export function gradedEntry(
  files: Files,
  report: PhotoReport,
  grades: readonly StoneGrade[],
  contamination: Contamination | null,
): PhotoEntry {
  const { warnings, widthPx, heightPx, mmPerPx, ball, light, stones } = report;
  const entries = stones.map((stone, i) => stoneEntry(stone, grades[i]!));
  const measured = { warnings, widthPx, heightPx, mmPerPx, ball, light, stones: entries };
  const shots = { exposures: files, exposureRatios: report.exposureRatios ?? [1] };
  const lampMoved = report.lampMoved ?? null;
  return { file: files[0], refused: null, ...measured, ...shots, lampMoved, contamination };
}

/** The entry of a photo that was refused: nothing was measured. */
export function refusedEntry(files: Files, { code, message }: Refusal): PhotoEntry {
  const nothing = { widthPx: null, heightPx: null, mmPerPx: null, ball: null, light: null } as const;
  const shots = { exposures: files, exposureRatios: null };
  return {
    file: files[0],
    refused: { code, message },
    warnings: [],
    ...nothing,
    stones: [],
    ...shots,
    lampMoved: null,
    contamination: null,
  };
}

/** The whole JSON document. */
export function jsonOf(photos: readonly PhotoEntry[]): string {
  return JSON.stringify({ schema: 1, photos });
}

function stoneEntry(stone: StoneReport, grade: StoneGrade): StoneEntry {
  const { id, center, outline, areaMm2, lengthMm, widthMm, flaws } = stone;
  const { pitsPerCm2, fractureMm, smoothness, verdict } = grade;
  const { action, reasons } = verdict;
  const gloss = grade.gloss && glossEntry(grade.gloss, stone.highlight?.bodyReflectance ?? null);
  const glossAtMost = grade.gu60AtMost === null ? null : { gu60: grade.gu60AtMost };
  const measured = { id, center, outline, areaMm2, lengthMm, widthMm, gloss, glossAtMost, flaws };
  const { waviness = null, dullPatches = null } = grade.skin ?? {};
  const graded = { pitsPerCm2, fractureMm, smoothness, verdict: { action, reasons } };
  const surface = { inspectedCm2: stone.inspectedCm2, pitRating: grade.pitRating };
  return { ...measured, ...graded, waviness, dullPatches, furtherGloss: grade.furtherGloss, ...surface };
}

function glossEntry(gloss: Gloss, bodyReflectance: number | null): GlossEntry {
  const { alpha, alphaLow, alphaHigh, gu60, gu20, finish, ceilingGu60 } = gloss;
  const { gu85, gu60Low, gu60High, level, shareOfCeiling } = gloss;
  const figures = shineFigures(alpha, gloss.n, bodyReflectance);
  const { imageClarity, distinctnessOfImage, haze, haze30, contrast, distinctness } = figures;
  return {
    ...{ alpha, alphaLow, alphaHigh, gu60, gu20, finish, ceilingGu60 },
    ...{ gu85, gu60Low, gu60High, level, shareOfCeiling },
    ...{ imageClarity, distinctnessOfImage, haze, haze30, contrast, distinctness, bodyReflectance },
  };
}
