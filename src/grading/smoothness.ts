import { lengthWords, surfaceWords } from '../texts/measures';
import { plainNumber } from '../texts/plainNumber';
import { texts } from '../texts/speech';
import type { FlawTallies } from './flawTally';
import type { MeasuredFlaw } from './measuredStone';

/** What one kind of flaw takes off the smoothness. */
export interface SmoothnessPart {
  readonly kind: MeasuredFlaw['kind'];
  /** Points lost, 0 to `most`. */
  readonly lost: number;
  /** Most points this kind can take. */
  readonly most: number;
  /** What was found, as part of a sentence: "3 pits, 1.4 mm across together, on 3.2 cm²". */
  readonly why: string;
}

export interface Smoothness {
  /** 0 to 100; 100 is a surface without a flaw. */
  readonly score: number;
  readonly parts: readonly SmoothnessPart[];
}

/**
 * Points at stake, and millimeters of flaw per cm² at which 63 % of them are lost. Our default:
 * pits weigh most because they hold grit, fractures next because they rarely grind out (common practice).
 */
const WEIGHTS = [
  { kind: 'pit', most: 50, scale: 1.5 },
  { kind: 'fracture', most: 30, scale: 3 },
  { kind: 'chip', most: 12, scale: 2 },
  { kind: 'scratch', most: 8, scale: 5 },
] as const;

/**
 * Smoothness of a stone's surface: 100 less what each kind of flaw takes,
 *
 *     lost = most · (1 − exp(−load / scale)),  load = millimeters of flaw per cm² inspected.
 *
 * More or larger flaws never raise it, and no kind can take more than its share.
 *
 * @param tallies - Flaws of the stone; only sure ones count.
 * @returns The score and its four parts, always in the same order.
 */
export function smoothness(tallies: FlawTallies): Smoothness {
  const { noneSeen, seenOn } = texts().verdicts.reasons;
  const parts = WEIGHTS.map(({ kind, most, scale }) => {
    const { count, totalMm } = tallies.sure[kind];
    const lost = most * -Math.expm1(-totalMm / tallies.surfaceCm2 / scale);
    const why =
      count === 0
        ? noneSeen(kind)
        : seenOn(plainNumber(count), kind, lengthWords(totalMm), surfaceWords(tallies.surfaceCm2));
    return { kind, lost, most, why };
  });
  return { score: Math.max(0, 100 - parts.reduce((sum, { lost }) => sum + lost, 0)), parts };
}
