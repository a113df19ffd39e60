import { densityNumber, densityUnit, lengthWords } from '../texts/measures';
import { plainNumber } from '../texts/plainNumber';
import { texts } from '../texts/speech';
import type { FlawTallies, FlawTally } from './flawTally';
import type { StepLimits } from './limits';
import type { Action, Opinion } from './opinion';
import { backTo, scratchOrigin } from './scratchOrigin';
import type { Step } from './steps';

/**
 * What the flaws of a stone say about it. No opinion means that they are within every limit.
 *
 * @param tallies - The stone's flaws.
 * @param step - Step the batch is in.
 * @param limits - What is let pass at this step.
 * @returns Opinions from sure flaws; if there are none, a call to look closer when doubtful ones could change that.
 */
export function flawOpinions(tallies: FlawTallies, step: Step, limits: StepLimits): Opinion[] {
  const sure = overLimits(tallies.sure, tallies.surfaceCm2, step, limits);
  const doubtful = overLimits(tallies.withDoubtful, tallies.surfaceCm2, step, limits);
  if (sure.length > 0 || doubtful.length === 0) return sure;
  return [{ action: 'look-closer', reason: doubtSentence(tallies, limits) }];
}

function overLimits(tally: FlawTally, surfaceCm2: number, step: Step, limits: StepLimits): Opinion[] {
  const again: Action = step === 'coarse' ? 'repeat' : 'back-to-coarse';
  return [
    ...fractures(tally, step, limits, again),
    ...pits(tally, surfaceCm2, step, limits, again),
    ...chips(tally, step, limits, again),
    ...scratches(tally, step, limits),
  ];
}

function fractures({ fracture }: FlawTally, step: Step, limits: StepLimits, again: Action): Opinion[] {
  const { fracturesTooLong, fracturesOver } = texts().verdicts.reasons;
  const length = lengthWords(fracture.totalMm);
  if (fracture.totalMm > limits.setAsideFractureMm) {
    return [{ action: 'set-aside', reason: fracturesTooLong(fracture.count, length) }];
  }
  if (fracture.totalMm <= limits.maxFractureMm) return [];
  const limit = lengthWords(limits.maxFractureMm);
  return [{ action: again, reason: fracturesOver(fracture.count, length, limit, step) }];
}

function pits(
  { pit }: FlawTally,
  surfaceCm2: number,
  step: Step,
  limits: StepLimits,
  again: Action,
): Opinion[] {
  const { pitsOver, pitsHoldGrit, widestPit } = texts().verdicts.reasons;
  const opinions: Opinion[] = [];
  const density = pit.count / surfaceCm2;
  if (density > limits.maxPitsPerCm2) {
    const limit = densityNumber(limits.maxPitsPerCm2);
    const amount = pitsOver(densityNumber(density), densityUnit(), limit, step);
    opinions.push({ action: again, reason: step === 'coarse' ? amount : `${amount} ${pitsHoldGrit}` });
  }
  if (pit.largestMm > limits.maxPitDiameterMm) {
    const size = widestPit(lengthWords(pit.largestMm), lengthWords(limits.maxPitDiameterMm), step);
    opinions.push({ action: again, reason: size });
  }
  return opinions;
}

function chips({ chip }: FlawTally, step: Step, limits: StepLimits, again: Action): Opinion[] {
  if (chip.largestMm <= limits.maxChipMm) return [];
  const { widestChip } = texts().verdicts.reasons;
  const reason = widestChip(lengthWords(chip.largestMm), lengthWords(limits.maxChipMm), step);
  return [{ action: again, reason }];
}

function scratches({ scratch }: FlawTally, step: Step, limits: StepLimits): Opinion[] {
  if (limits.maxScratches === null || scratch.count <= limits.maxScratches) return [];
  const width = scratch.usualWidthMm;
  const origin = width === null ? null : scratchOrigin(width);
  const cause = width === null || origin === null ? null : { width: lengthWords(width), origin };
  const target = backTo(origin, step);
  const { scratchesOver } = texts().verdicts.reasons;
  const reason = scratchesOver(scratch.count, cause, target === step ? null : target);
  return [{ action: 'repeat', reason }];
}

function doubtSentence({ sure, withDoubtful }: FlawTallies, { maxScratches }: StepLimits): string {
  const found = (['fracture', 'pit', 'chip', 'scratch'] as const).flatMap((kind) => {
    const more = withDoubtful[kind].count - sure[kind].count;
    return more > 0 && (kind !== 'scratch' || maxScratches !== null)
      ? [[plainNumber(more), kind] as const]
      : [];
  });
  return texts().verdicts.reasons.tooFaint(found);
}
