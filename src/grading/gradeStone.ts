import { flawTally } from './flawTally';
import { type FurtherGloss, furtherGloss } from './furtherGloss';
import { type Gloss, glossOf } from './gloss';
import { glossAtMost } from './glossAtMost';
import { DEFAULT_LIMITS, type Limits } from './limits';
import type { MaterialName } from './materials';
import type { MeasuredSkin, MeasuredStone } from './measuredStone';
import { type PitRating, pitRating } from './pitRating';
import { type SmoothnessPart, smoothness } from './smoothness';
import type { Step } from './steps';
import { type Verdict, verdict } from './verdict';

/** What is said about a batch before its stones are graded. */
export interface GradeSettings {
  readonly step: Step;
  /** Null when nothing was said about the stones. */
  readonly material: MaterialName | null;
  /** Null for the default limits. */
  readonly limits: Limits | null;
  /** Scale of the photo; when given, stones of too few pixels are not judged. */
  readonly mmPerPx?: number;
}

/** A stone's grade: nothing here needs the photo again. */
export interface StoneGrade {
  readonly id: number;
  readonly gloss: Gloss | null;
  /** 60° gloss that a stone without a highlight has at most; null when its gloss is known. */
  readonly gu60AtMost: number | null;
  /** Gloss at further images of the lamp on the stone; empty when the lamp is seen once or not at all. */
  readonly furtherGloss: readonly FurtherGloss[];
  /** Waves and dull patches of the skin, apart from its roughness; null where no lamp's image tells. */
  readonly skin: MeasuredSkin | null;
  /** Sure pits in the classes of ASTM G46. */
  readonly pitRating: PitRating;
  /** Sure pits per cm² of surface seen. */
  readonly pitsPerCm2: number;
  /** Length of all sure fractures together, mm. */
  readonly fractureMm: number;
  /** 0 to 100. */
  readonly smoothness: number;
  readonly smoothnessParts: readonly SmoothnessPart[];
  readonly verdict: Verdict;
}

/**
 * Grades a measured stone for a step, a material and the owner's limits.
 *
 * @param stone - What was measured; a report's stones fit.
 * @param settings - Step, material and limits.
 * @returns Gloss, smoothness and verdict.
 */
export function gradeStone(stone: MeasuredStone, settings: GradeSettings): StoneGrade {
  const { step, material, mmPerPx } = settings;
  const limits = (settings.limits ?? DEFAULT_LIMITS)[step];
  const tallies = flawTally(stone, limits);
  const gloss = stone.highlight === null ? null : glossOf(stone.highlight.byIndex, material);
  const gu60AtMost = gloss || !stone.glossBound ? null : glossAtMost(stone.glossBound, material);
  const { score, parts } = smoothness(tallies);
  return {
    id: stone.id,
    gloss,
    gu60AtMost,
    pitRating: ratingOf(stone, limits.minFlawConfidence, tallies.surfaceCm2),
    furtherGloss: gloss ? furtherGloss(gloss, stone.highlight?.further ?? [], material) : [],
    skin: stone.skin ?? null,
    pitsPerCm2: tallies.sure.pit.count / tallies.surfaceCm2,
    fractureMm: tallies.sure.fracture.totalMm,
    smoothness: score,
    smoothnessParts: parts,
    verdict: verdict({ stone, tallies, gloss, gu60AtMost, step, limits, material, mmPerPx }),
  };
}

function ratingOf({ flaws }: MeasuredStone, leastConfidence: number, surfaceCm2: number): PitRating {
  const pits = flaws.filter(({ kind, confidence }) => kind === 'pit' && confidence >= leastConfidence);
  const totalMm2 = pits.reduce((sum, { diameterMm = 0 }) => sum + (Math.PI / 4) * diameterMm ** 2, 0);
  return pitRating(pits.length, surfaceCm2, totalMm2);
}
