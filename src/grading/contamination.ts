import { texts } from '../texts/speech';
import { flawTally, usualWidthMm } from './flawTally';
import { DEFAULT_LIMITS, type Limits } from './limits';
import type { MeasuredStone } from './measuredStone';
import { backTo, scratchOrigin } from './scratchOrigin';
import type { Step } from './steps';

/** What the scratches of a whole tray tell. */
export interface Contamination {
  /** Ids of the stones with more fresh scratches than the step lets pass. */
  readonly scratched: readonly number[];
  /** True when so many stones are scratched that coarser grit must be in the batch. */
  readonly isBatch: boolean;
  /** Step whose grit leaves grooves that wide; null when their width was not measured. */
  readonly origin: Step | null;
  /** Step that the batch goes back to. */
  readonly backTo: Step;
  readonly sentence: string;
}

/** From this share of a tray, and from this number of stones on, scratches are the batch's and not a stone's. Our default. */
const BATCH_SHARE = 0.1;
const BATCH_STONES = 2;

/**
 * Looks at all stones of a tray for scratches that a late step should not leave.
 *
 * @param stones - The tray.
 * @param step - Step they come from.
 * @param limits - The owner's limits; null for the default ones.
 * @returns Null when no stone is scratched, or the step itself scratches.
 */
export function contamination(
  stones: readonly MeasuredStone[],
  step: Step,
  limits: Limits | null,
): Contamination | null {
  const { maxScratches, minFlawConfidence } = (limits ?? DEFAULT_LIMITS)[step];
  if (maxScratches === null) return null;
  const scratched = stones.filter(
    (stone) => flawTally(stone, { minFlawConfidence }).sure.scratch.count > maxScratches,
  );
  if (scratched.length === 0) return null;
  const scratches = scratched
    .flatMap(({ flaws }) => flaws)
    .filter(({ kind, confidence }) => kind === 'scratch' && confidence >= minFlawConfidence);
  const widthMm = usualWidthMm(scratches);
  const origin = widthMm === null ? null : scratchOrigin(widthMm);
  const found = {
    scratched: scratched.map(({ id }) => id),
    isBatch: scratched.length >= Math.max(BATCH_STONES, BATCH_SHARE * stones.length),
    origin,
    backTo: backTo(origin, step),
  };
  return { ...found, sentence: sentenceOf(found, stones.length, step) };
}

function sentenceOf(found: Omit<Contamination, 'sentence'>, all: number, step: Step): string {
  const { fewScratched, batchScratched } = texts().verdicts.reasons;
  if (!found.isBatch) return fewScratched(found.scratched, all);
  return batchScratched(found.scratched, all, found.origin, found.backTo === step ? null : found.backTo);
}
