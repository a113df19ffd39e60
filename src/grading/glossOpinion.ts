import { glossUnits } from '../optics/glossUnits';
import type { Gloss } from './gloss';
import { glossSentence } from './glossSentence';
import type { StepLimits } from './limits';
import { MATERIALS, type Material, type MaterialName } from './materials';
import type { Opinion } from './opinion';
import { plainNumber } from './plainNumber';
import { refractiveIndex } from './refractiveIndex';
import { STEP_FACTS, type Step } from './steps';

/**
 * What the shine of a stone says about it; always one opinion.
 *
 * @param gloss - Estimated gloss.
 * @param step - Step the batch is in.
 * @param limits - What is let pass at this step.
 * @param material - Null when nothing was said about the stone.
 */
export function glossOpinion(
  gloss: Gloss,
  step: Step,
  limits: StepLimits,
  material: MaterialName | null,
): Opinion {
  return step === 'polish' ? polished(gloss, limits, material) : ground(gloss, step, material);
}

/** Steps before polish: smooth enough to go on, or rougher than the step should leave it. */
function ground(gloss: Gloss, step: Step, material: MaterialName | null): Opinion {
  const { roughestAlpha } = STEP_FACTS[step];
  const { n } = refractiveIndex(material);
  const title = STEP_FACTS[step].title.toLowerCase();
  if (roughestAlpha >= 1)
    return {
      action: 'advance',
      reason: `Reads about ${glossSentence(gloss)}, dull as ${title} grit leaves it.`,
    };
  const least = plainNumber(glossUnits(roughestAlpha, n, 60));
  if (gloss.alphaHigh <= roughestAlpha) {
    return {
      action: 'advance',
      reason: `Reads about ${glossSentence(gloss)}; ${least} or more is expected after ${title}.`,
    };
  }
  if (gloss.alpha <= roughestAlpha) {
    const reason = `Reads about ${glossSentence(gloss)}, not sure enough: ${least} or more is expected after ${title}. Photograph it again with a rounded side to the lamp.`;
    return { action: 'look-closer', reason };
  }
  const doubt =
    gloss.alphaLow > roughestAlpha ? '' : ' It could just be enough, so compare it with the others.';
  return {
    action: 'repeat',
    reason: `Reads about ${glossSentence(gloss)}; ${least} or more is expected after ${title}.${doubt}`,
  };
}

function polished(gloss: Gloss, limits: StepLimits, material: MaterialName | null): Opinion {
  const wanted = limits.minShareOfCeiling ?? 0;
  const ceiling = `a perfect polish of ${material ?? 'quartz'} reads ${plainNumber(gloss.ceilingGu60)}`;
  const now = `Reads about ${glossSentence(gloss)}, ${gloss.finish}: ${percent(gloss.shareOfCeiling)} of its ceiling, ${ceiling}.`;
  if (gloss.shareOfCeilingLow >= wanted) return { action: 'finished', reason: now };
  if (gloss.shareOfCeiling >= wanted) {
    const reason = `${now} It could be as little as ${percent(gloss.shareOfCeilingLow)}, and finished means ${percent(wanted)}: compare it with a stone you know.`;
    return { action: 'look-closer', reason };
  }
  const missing = `Finished means ${percent(wanted)}, ${plainNumber(wanted * gloss.ceilingGu60)} gloss units.`;
  const doubt =
    gloss.shareOfCeilingHigh >= wanted ? ` It could be as much as ${percent(gloss.shareOfCeilingHigh)}.` : '';
  return { action: 'repeat', reason: `${now} ${missing}${doubt}${habit(gloss, material)}` };
}

function habit(gloss: Gloss, material: MaterialName | null): string {
  const facts: Material | null = material === null ? null : MATERIALS[material];
  if (facts?.practicalFinish === undefined || gloss.finish !== facts.practicalFinish) return '';
  return ` Many pieces of ${material} stop at ${facts.practicalFinish}: if one more polish brings nothing, call it finished.`;
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
