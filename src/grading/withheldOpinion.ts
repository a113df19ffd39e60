import type { Opinion } from './opinion';

/** What is said of a stone whose gloss was not read because lamp or camera moved. */
export function withheldOpinion(): Opinion {
  const reason =
    'Its gloss was not read, because lamp or camera are not where they were: lay the ball in the tray and take the photo again.';
  return { action: 'look-closer', reason };
}
