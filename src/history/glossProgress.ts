import { glossOf } from '../grading/gloss';
import type { MaterialName } from '../grading/materials';
import { STEP_FACTS } from '../grading/steps';
import { plainNumber } from '../texts/plainNumber';
import { texts } from '../texts/speech';
import type { StoneCheck } from './batchHistory';
import { joinFaces } from './joinFaces';

/** How a stone's gloss comes along over the fine steps. */
export interface GlossProgress {
  readonly kind: 'on-time' | 'late' | 'stuck';
  readonly sentence: string;
}

/**
 * Holds the last reading against what its step should leave, and against the reading before.
 *
 * Late: rougher, for certain, than the step leaves a stone. Stuck: a finer step or another round of the same has not
 * made it smoother. What a step leaves is our default, see `STEP_FACTS`.
 *
 * @param checks - The oldest first.
 * @param material - Null when nothing was said.
 * @returns Null before fine steps, and where the photos carry no number.
 */
export function glossProgress(
  checks: readonly StoneCheck[],
  material: MaterialName | null,
): GlossProgress | null {
  const read = checks.flatMap((seen) => {
    const { highlight } = joinFaces(seen.faces.map(({ stone }) => stone));
    if (seen.check.step === 'coarse' || highlight === null) return [];
    return [{ step: seen.check.step, gloss: glossOf(highlight.byIndex, material ?? seen.check.material) }];
  });
  const [before, now] = [read.at(-2), read.at(-1)];
  if (!now) return null;
  const words = texts().history;
  const gu = plainNumber(now.gloss.gu60);
  const isLate = now.gloss.alphaLow > STEP_FACTS[now.step].roughestAlpha;
  if (before && isLate && now.gloss.alpha >= 0.9 * before.gloss.alpha) {
    const then = plainNumber(before.gloss.gu60);
    return { kind: 'stuck', sentence: words.glossStuck(then, before.step, gu, now.step) };
  }
  if (isLate) return { kind: 'late', sentence: words.glossLate(gu, now.step) };
  return { kind: 'on-time', sentence: words.glossOnTime(gu, now.step) };
}
