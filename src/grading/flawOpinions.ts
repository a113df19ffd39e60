import { flawCount } from './flawCount';
import type { FlawTallies, FlawTally } from './flawTally';
import type { StepLimits } from './limits';
import type { Action, Opinion } from './opinion';
import { plainNumber } from './plainNumber';
import { backTo, scratchOrigin, wayBack } from './scratchOrigin';
import { STEP_FACTS, type Step } from './steps';

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
  const length = plainNumber(fracture.totalMm);
  const what =
    fracture.count === 1
      ? `One fracture of ${length} mm`
      : `${fracture.count} fractures, ${length} mm in all`;
  if (fracture.totalMm > limits.setAsideFractureMm) {
    const advice = 'Saw it, break it there, or keep it as it is.';
    return [
      { action: 'set-aside', reason: `${what}: fractures like this often only open further. ${advice}` },
    ];
  }
  if (fracture.totalMm <= limits.maxFractureMm) return [];
  return [
    {
      action: again,
      reason: `${what}, the limit ${occasion(step)} is ${plainNumber(limits.maxFractureMm)} mm.`,
    },
  ];
}

function pits(
  { pit }: FlawTally,
  surfaceCm2: number,
  step: Step,
  limits: StepLimits,
  again: Action,
): Opinion[] {
  const opinions: Opinion[] = [];
  const density = pit.count / surfaceCm2;
  if (density > limits.maxPitsPerCm2) {
    const limit = plainNumber(limits.maxPitsPerCm2);
    const amount = `${flawCount(density, 'pit')} per cm², the limit ${occasion(step)} is ${limit}.`;
    opinions.push({ action: again, reason: step === 'coarse' ? amount : `${amount} ${PITS_HOLD_GRIT}` });
  }
  if (pit.largestMm > limits.maxPitDiameterMm) {
    const limit = plainNumber(limits.maxPitDiameterMm);
    const size = `The widest pit is ${plainNumber(pit.largestMm)} mm across, the limit ${occasion(step)} is ${limit} mm.`;
    opinions.push({ action: again, reason: size });
  }
  return opinions;
}

function chips({ chip }: FlawTally, step: Step, limits: StepLimits, again: Action): Opinion[] {
  if (chip.largestMm <= limits.maxChipMm) return [];
  const limit = plainNumber(limits.maxChipMm);
  const reason = `A chip of ${plainNumber(chip.largestMm)} mm, the limit ${occasion(step)} is ${limit} mm.`;
  return [{ action: again, reason }];
}

function scratches({ scratch }: FlawTally, step: Step, limits: StepLimits): Opinion[] {
  if (limits.maxScratches === null || scratch.count <= limits.maxScratches) return [];
  const found = scratch.count === 1 ? 'One fresh scratch' : `${scratch.count} fresh scratches`;
  const width = scratch.usualWidthMm;
  const origin = width === null ? null : scratchOrigin(width);
  const why =
    width === null || origin === null
      ? 'coarser grit may have got in'
      : `about ${plainNumber(width)} mm wide, as loose ${STEP_FACTS[origin].grit} leaves them`;
  const errand = `Wash out stones and barrel, and ${wayBack(backTo(origin, step), step)}.`;
  return [{ action: 'repeat', reason: `${found}: ${why}. ${errand}` }];
}

const PITS_HOLD_GRIT = 'Pits hold grit that would scratch the batch.';

function occasion(step: Step): string {
  if (step === 'coarse') return 'for leaving coarse';
  return step === 'polish' ? 'for a finished stone' : `at the ${STEP_FACTS[step].title.toLowerCase()} step`;
}

function doubtSentence({ sure, withDoubtful }: FlawTallies, { maxScratches }: StepLimits): string {
  const parts = (['fracture', 'pit', 'chip', 'scratch'] as const).flatMap((kind) => {
    const more = withDoubtful[kind].count - sure[kind].count;
    return more > 0 && (kind !== 'scratch' || maxScratches !== null) ? [flawCount(more, kind)] : [];
  });
  return `The photo may also show ${parts.join(' and ')}, too faint to be sure of; real ones would be over the limit. Check with a loupe.`;
}
