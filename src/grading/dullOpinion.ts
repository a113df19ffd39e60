import { glossUnits } from '../optics/glossUnits';
import { plainNumber } from '../texts/plainNumber';
import { texts } from '../texts/speech';
import { ceilingGu60 } from './ceilingGu60';
import type { StepLimits } from './limits';
import type { MaterialName } from './materials';
import type { Opinion } from './opinion';
import { refractiveIndex } from './refractiveIndex';
import { STEP_FACTS, type Step } from './steps';

/**
 * What it says about a stone that no highlight could be read on it; always one opinion.
 *
 * @param gu60AtMost - 60° gloss it has at most; null when nothing is known.
 * @param step - Step the batch is in.
 * @param limits - What is let pass at this step.
 * @param material - Null when nothing was said about the stone.
 */
export function dullOpinion(
  gu60AtMost: number | null,
  step: Step,
  limits: StepLimits,
  material: MaterialName | null,
): Opinion {
  const { dullExpected, tooDull, highlightMissing } = texts().verdicts.reasons;
  const most = gu60AtMost === null ? null : plainNumber(gu60AtMost);
  if (step === 'coarse' || step === 'medium') return { action: 'advance', reason: dullExpected(most, step) };
  const expected = leastExpected(step, limits, material);
  if (gu60AtMost !== null && gu60AtMost < expected) {
    return { action: 'repeat', reason: tooDull(most, plainNumber(expected), step) };
  }
  return { action: 'look-closer', reason: highlightMissing(most, step) };
}

function leastExpected(step: Step, limits: StepLimits, material: MaterialName | null): number {
  const { n } = refractiveIndex(material);
  if (step === 'polish') return (limits.minShareOfCeiling ?? 0) * ceilingGu60(n);
  const { roughestAlpha } = STEP_FACTS[step];
  return roughestAlpha >= 1 ? 0 : glossUnits(roughestAlpha, n, 60);
}
