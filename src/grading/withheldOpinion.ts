import type { Opinion } from './opinion';

/** What is said of a stone whose gloss was not read because lamp or camera moved, or a second light shone on it. */
export function withheldOpinion(why: true | 'second-light' = true): Opinion {
  const reason =
    why === 'second-light'
      ? 'Its gloss was not read, because its highlight lies where it mirrors a second light: switch that light off and take the photo again.'
      : 'Its gloss was not read, because lamp or camera are not where they were: lay the ball in the tray and take the photo again.';
  return { action: 'look-closer', reason };
}
