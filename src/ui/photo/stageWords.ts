import type { Stage } from '../../analysis/options';

/** What a person reads while each step of the analysis goes by. */
export const STAGE_WORDS: Readonly<Record<Stage, string>> = {
  decode: 'Opening the photo',
  ball: 'Finding the ball and the lamp',
  stones: 'Outlining the stones',
  highlights: 'Reading the highlights',
  flaws: 'Looking for pits and fractures',
};

/** In the order in which they go by. */
const STAGES = Object.keys(STAGE_WORDS);

/**
 * Share of the whole analysis that is done, counting every step alike.
 *
 * @param share - Share of the step that is done, 0 to 1.
 * @returns 0 to 1.
 */
export function overallShare(stage: Stage, share: number): number {
  return (STAGES.indexOf(stage) + Math.min(1, Math.max(0, share))) / STAGES.length;
}
