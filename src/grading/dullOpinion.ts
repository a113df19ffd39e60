import { glossUnits } from '../optics/glossUnits';
import { ceilingGu60 } from './ceilingGu60';
import type { StepLimits } from './limits';
import type { MaterialName } from './materials';
import type { Opinion } from './opinion';
import { plainNumber } from './plainNumber';
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
  const title = STEP_FACTS[step].title.toLowerCase();
  const most = gu60AtMost === null ? '' : `: at most about ${plainNumber(gu60AtMost)} gloss units at 60°`;
  if (step === 'coarse' || step === 'medium') {
    return {
      action: 'advance',
      reason: `No highlight stands out${most}, as expected after ${title} grit.`,
    };
  }
  const expected = leastExpected(step, limits, material);
  if (gu60AtMost !== null && gu60AtMost < expected) {
    const reason = `No highlight stands out${most}; ${plainNumber(expected)} or more is expected after the ${title} step.`;
    return { action: 'repeat', reason };
  }
  const reason = `No highlight found${most}, and one is expected after the ${title} step. Turn a rounded side to the lamp and photograph it again.`;
  return { action: 'look-closer', reason };
}

function leastExpected(step: Step, limits: StepLimits, material: MaterialName | null): number {
  const { n } = refractiveIndex(material);
  if (step === 'polish') return (limits.minShareOfCeiling ?? 0) * ceilingGu60(n);
  const { roughestAlpha } = STEP_FACTS[step];
  return roughestAlpha >= 1 ? 0 : glossUnits(roughestAlpha, n, 60);
}
