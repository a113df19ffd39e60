import { glossUnits } from '../optics/glossUnits';
import { plainNumber } from '../texts/plainNumber';
import { texts } from '../texts/speech';
import type { Gloss } from './gloss';
import { glossSentence } from './glossSentence';
import type { StepLimits } from './limits';
import { MATERIALS, type Material, type MaterialName } from './materials';
import type { Opinion } from './opinion';
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
  const words = texts().verdicts.reasons;
  const reading = glossSentence(gloss);
  if (roughestAlpha >= 1) return { action: 'advance', reason: words.dullAsGround(reading, step) };
  const least = plainNumber(glossUnits(roughestAlpha, n, 60));
  if (gloss.alphaHigh <= roughestAlpha) {
    return { action: 'advance', reason: words.expected(reading, least, step) };
  }
  if (gloss.alpha <= roughestAlpha) {
    return { action: 'look-closer', reason: words.maybeSmooth(reading, least, step) };
  }
  const doubt = gloss.alphaLow > roughestAlpha ? [] : [words.couldBeEnough];
  return { action: 'repeat', reason: [words.expected(reading, least, step), ...doubt].join(' ') };
}

function polished(gloss: Gloss, limits: StepLimits, material: MaterialName | null): Opinion {
  const words = texts().verdicts.reasons;
  const wanted = limits.minShareOfCeiling ?? 0;
  const ceiling = plainNumber(gloss.ceilingGu60);
  const share = percent(gloss.shareOfCeiling);
  const now = words.polished(glossSentence(gloss), gloss.finish, share, material, ceiling);
  if (gloss.shareOfCeilingLow >= wanted) return { action: 'finished', reason: now };
  if (gloss.shareOfCeiling >= wanted) {
    const doubt = words.couldBeLess(percent(gloss.shareOfCeilingLow), percent(wanted));
    return { action: 'look-closer', reason: `${now} ${doubt}` };
  }
  const missing = words.finishedMeans(percent(wanted), plainNumber(wanted * gloss.ceilingGu60));
  const couldBeMore =
    gloss.shareOfCeilingHigh >= wanted ? [words.couldBeMore(percent(gloss.shareOfCeilingHigh))] : [];
  return { action: 'repeat', reason: [now, missing, ...couldBeMore, ...habit(gloss, material)].join(' ') };
}

/** What many pieces of the material do. */
function habit(gloss: Gloss, material: MaterialName | null): string[] {
  if (material === null) return [];
  const { practicalFinish }: Material = MATERIALS[material];
  if (practicalFinish === undefined || gloss.finish !== practicalFinish) return [];
  return [texts().verdicts.reasons.oftenStops(material, practicalFinish)];
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
