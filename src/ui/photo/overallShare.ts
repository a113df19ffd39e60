import type { Stage } from '../../analysis/options';

/** In the order in which they go by. */
const STAGES: readonly Stage[] = ['decode', 'ball', 'stones', 'highlights', 'flaws'];

/**
 * Share of the whole analysis that is done, counting every step alike.
 *
 * @param share - Share of the step that is done, 0 to 1.
 * @returns 0 to 1.
 */
export function overallShare(stage: Stage, share: number): number {
  return (STAGES.indexOf(stage) + Math.min(1, Math.max(0, share))) / STAGES.length;
}
