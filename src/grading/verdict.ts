import { densityNumber, densityUnit, lengthWords } from '../texts/measures';
import { texts } from '../texts/speech';
import { dullOpinion } from './dullOpinion';
import { flawOpinions } from './flawOpinions';
import type { FlawTallies } from './flawTally';
import type { Gloss } from './gloss';
import { glossOpinion } from './glossOpinion';
import type { StepLimits } from './limits';
import type { MaterialName } from './materials';
import type { MeasuredStone } from './measuredStone';
import { ACTIONS_BEST_FIRST, type Action, type Opinion } from './opinion';
import type { Step } from './steps';
import { viewOpinions } from './viewOpinions';
import { wetOpinion } from './wetOpinion';
import { withheldOpinion } from './withheldOpinion';

export type { Action } from './opinion';

/** What to do with a stone, and why. */
export interface Verdict {
  readonly action: Action;
  /** Whole sentences, the deciding ones first; at least one. */
  readonly reasons: readonly string[];
}

/** All that a verdict rests on. */
export interface VerdictBasis {
  readonly stone: MeasuredStone;
  readonly tallies: FlawTallies;
  readonly gloss: Gloss | null;
  /** 60° gloss that a stone without a highlight has at most; null when nothing is known. */
  readonly gu60AtMost: number | null;
  readonly step: Step;
  readonly limits: StepLimits;
  readonly material: MaterialName | null;
  readonly mmPerPx?: number | undefined;
}

/**
 * Weighs what flaws, shine and view say about a stone: the worst news decides.
 *
 * A bad stone sent on spoils a batch, a good one kept back loses a week; so a stone only goes on or is finished
 * when nothing speaks against it, and doubt calls for another look. A stone that looks wet is judged no further,
 * because water hides pits, and neither is what does not look like a stone.
 *
 * @param basis - The stone, its flaws and gloss, and the rules of the step.
 * @returns One action with its reasons; more flaws never make it better.
 */
export function verdict(basis: VerdictBasis): Verdict {
  const { stone, tallies, gloss, step, limits, material, mmPerPx } = basis;
  const flaws = flawOpinions(tallies, step, limits);
  const wet = wetOpinion(gloss, step, material);
  const views = viewOpinions(stone, mmPerPx);
  const isUnlike = stone.unlike !== undefined && stone.unlike !== 'photo';
  if (isUnlike || wet?.sure)
    return lookCloser([...(isUnlike ? views : []), ...(wet?.sure ? [wet] : []), ...flaws]);
  const shine = wet ?? shineOpinion(basis);
  const sound = flaws.length === 0 ? [soundness(tallies, step)] : [];
  const opinions = [...flaws, ...views, ...sound, shine];
  const found = worst(opinions);
  const small = tooSmall(stone, step, limits, found.action);
  return small ? { action: small.action, reasons: [small.reason, ...found.reasons] } : found;
}

const lookCloser = (opinions: readonly Opinion[]): Verdict => ({
  action: 'look-closer',
  reasons: opinions.map(({ reason }) => reason),
});

/** What a stone that does not look wet shows by its shine, or why that was not read. */
function shineOpinion({ stone, gloss, gu60AtMost, step, limits, material }: VerdictBasis): Opinion {
  if (stone.glossWithheld) return withheldOpinion(stone.glossWithheld);
  return gloss
    ? glossOpinion(gloss, step, limits, material)
    : dullOpinion(gu60AtMost, step, limits, material);
}

function worst(opinions: readonly Opinion[]): Verdict {
  const rank = (opinion: Opinion) => ACTIONS_BEST_FIRST.indexOf(opinion.action);
  const sorted = [...opinions].sort((a, b) => rank(b) - rank(a));
  const action = sorted[0]?.action ?? 'look-closer';
  const isGood = action === 'advance' || action === 'finished';
  const kept = sorted.filter(
    (opinion) => isGood || (opinion.action !== 'advance' && opinion.action !== 'finished'),
  );
  return { action, reasons: kept.map(({ reason }) => reason) };
}

function soundness(tallies: FlawTallies, step: Step): Opinion {
  const { pit, fracture } = tallies.sure;
  const density = densityNumber(pit.count / tallies.surfaceCm2);
  const reason = texts().verdicts.reasons.sound(
    pit.count === 0 ? null : { density, per: densityUnit() },
    fracture.count === 0 ? null : lengthWords(fracture.totalMm),
  );
  return { action: step === 'polish' ? 'finished' : 'advance', reason };
}

/** Stones shrink; a small one is not worth another round of coarse. */
function tooSmall(stone: MeasuredStone, step: Step, limits: StepLimits, action: Action): Opinion | null {
  const grindsOn = action === 'back-to-coarse' || (action === 'repeat' && step === 'coarse');
  if (!grindsOn || stone.cutOff || stone.lengthMm >= limits.minLengthMm) return null;
  const { tooSmall: words } = texts().verdicts.reasons;
  return { action: 'set-aside', reason: words(lengthWords(stone.lengthMm), lengthWords(limits.minLengthMm)) };
}
