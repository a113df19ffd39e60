import { texts } from './speech';

/**
 * The owner's name for a thing as it is, and words instead of a name of which nothing can be seen, so that it can still
 * be told and tapped.
 *
 * @see Unicode Standard Annex 44: `Default_Ignorable_Code_Point` are letters that are shown as nothing.
 */
export const seenName = (name: string): string =>
  /[^\s\p{C}\p{Z}\p{Default_Ignorable_Code_Point}]/u.test(name) ? name : texts().journal.nameless;
