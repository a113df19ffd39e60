import { glossOf } from '../grading/gloss';
import type { MaterialName } from '../grading/materials';
import { plainNumber } from '../grading/plainNumber';
import { STEP_FACTS } from '../grading/steps';
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
  const { title, roughestAlpha } = STEP_FACTS[now.step];
  const after = title.toLowerCase();
  const gu = plainNumber(now.gloss.gu60);
  const isLate = now.gloss.alphaLow > roughestAlpha;
  if (before && isLate && now.gloss.alpha >= 0.9 * before.gloss.alpha) {
    const then = plainNumber(before.gloss.gu60);
    const sentence = `Stuck: it read ${then} gloss units after ${STEP_FACTS[before.step].title.toLowerCase()} and ${gu} now, and ${after} should leave it smoother. Another round of the same is unlikely to help: go back one grit, or take it as its end.`;
    return { kind: 'stuck', sentence };
  }
  if (isLate) {
    return { kind: 'late', sentence: `Late: ${gu} gloss units is rougher than ${after} should leave it.` };
  }
  return {
    kind: 'on-time',
    sentence: `On time: ${gu} gloss units is what ${after} should leave, or better.`,
  };
}
