import type { StepLimits } from '../grading/limits';
import type { Step } from '../grading/steps';
import { densityNumber, densityUnit, lengthNumber, lengthWords } from '../texts/measures';
import { texts } from '../texts/speech';
import type { StoneHistory } from './batchHistory';
import { flawLevels } from './stoneOutlook';

/** A limit that the owner's decisions speak for. */
export interface LearnedLimit {
  readonly step: Step;
  readonly limit: 'maxPitsPerCm2' | 'maxFractureMm';
  readonly value: number;
  readonly sentence: string;
}

/** So many stones let go against the advice make a habit. Our default. */
const LEAST_DECISIONS = 4;
const KINDS = [
  { kind: 'pit', limit: 'maxPitsPerCm2' },
  { kind: 'fracture', limit: 'maxFractureMm' },
] as const;

/**
 * Limits that the owner goes by without having set them: the level up to which stones were let go against the advice,
 * as long as nothing below it was held back.
 *
 * @param stones - Histories of any number of batches.
 * @param step - Step that the stones came out of.
 * @param limits - The owner's limits at that step now.
 */
export function learnedLimits(
  stones: readonly StoneHistory[],
  step: Step,
  limits: StepLimits,
): LearnedLimit[] {
  const decided = stones.flatMap(({ checks }) =>
    checks
      .filter(({ check, decision }) => check.step === step && decision !== null)
      .map((seen) => ({ levels: flawLevels(seen.faces, limits), goesOn: isGood(seen.decision) })),
  );
  return KINDS.flatMap(({ kind, limit }) => {
    const over = decided.filter(({ levels, goesOn }) => goesOn && levels[kind] > 1);
    const held = decided.filter(({ levels, goesOn }) => !goesOn && levels[kind] > 1);
    if (over.length < LEAST_DECISIONS) return [];
    const letGo = over.map(({ levels }) => levels[kind]).sort((a, b) => a - b);
    const usual = letGo[Math.floor(0.8 * (letGo.length - 1))]!;
    if (held.filter(({ levels }) => levels[kind] <= usual).length > over.length / 4) return [];
    const value = asWritten(usual * limits[limit]);
    const sentence = sentenceOf(kind, step, value, limits[limit]);
    return [{ step, limit, value, sentence }];
  });
}

function sentenceOf(kind: 'pit' | 'fracture', step: Step, value: number, limit: number): string {
  const { learnedPits, learnedFractures } = texts().history;
  return kind === 'pit'
    ? learnedPits(step, densityNumber(value), densityUnit(), densityNumber(limit))
    : learnedFractures(step, lengthWords(value), lengthNumber(limit));
}

/** Two digits, as a person would set a limit. */
const asWritten = (value: number) => Number(value.toFixed(value >= 10 ? 0 : value >= 0.995 ? 1 : 2));

const isGood = (action: string | null) => action === 'advance' || action === 'finished';
