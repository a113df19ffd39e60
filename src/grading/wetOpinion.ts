import { glossUnits } from '../optics/glossUnits';
import { plainNumber } from '../texts/plainNumber';
import { texts } from '../texts/speech';
import type { Gloss } from './gloss';
import { glossSentence } from './glossSentence';
import type { MaterialName } from './materials';
import type { Opinion } from './opinion';
import { refractiveIndex } from './refractiveIndex';
import { STEP_FACTS, type Step } from './steps';

/** A call to dry a stone, and whether its whole interval says so. */
export interface WetOpinion extends Opinion {
  readonly sure: boolean;
}

/**
 * Notices a stone that shines more than its step can make it: water fills scratches and fakes a polish.
 *
 * @param gloss - Estimated gloss; null when no highlight could be read.
 * @param step - Step the batch is in.
 * @param material - Null when nothing was said about the stone.
 * @returns A call to look closer; null when the shine fits the step.
 * @see Common practice: judge stones dry; a coarse-ground stone is matte by physics.
 */
export function wetOpinion(
  gloss: Gloss | null,
  step: Step,
  material: MaterialName | null,
): WetOpinion | null {
  const { wetBelowAlpha } = STEP_FACTS[step];
  if (gloss === null || wetBelowAlpha === null || gloss.alpha >= wetBelowAlpha) return null;
  const sure = gloss.alphaHigh < wetBelowAlpha;
  const most = plainNumber(glossUnits(wetBelowAlpha, refractiveIndex(material).n, 60));
  const reason = texts().verdicts.reasons.wet(glossSentence(gloss), most, step, sure);
  return { action: 'look-closer', reason, sure };
}
