import { type DullPatch, dullPatches } from './dullPatches';
import type { HighlightFit, HighlightProblem } from './highlightFit';
import { type Waviness, waviness } from './waviness';

/** What the lamp's image says of a stone's skin beside its roughness; lengths in pixels of the crop. */
export interface StoneSkin {
  /** Null where the image is too soft, too small or too broken to tell. */
  readonly waviness: Waviness | null;
  readonly dullPatches: readonly DullPatch[];
}

/**
 * Looks at how even a stone's skin is where it mirrors the lamp.
 *
 * @param found - The window of the highlight and its fit.
 * @returns No waviness where a dull patch breaks the image, since that bends its outline as waves do.
 */
export function stoneSkin(found: {
  readonly problem: HighlightProblem;
  readonly fit: HighlightFit;
}): StoneSkin {
  const { problem, fit } = found;
  const patches = dullPatches(problem, fit);
  return { waviness: patches.length > 0 ? null : waviness(problem, fit), dullPatches: patches };
}
