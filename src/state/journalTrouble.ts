import { BundleError } from '../bundle/bundleError';
import { texts } from '../texts/speech';

/**
 * What went wrong with the journal: storage is forbidden, could not be read, took nothing more, was brought up to date
 * by a newer edition in another window, or a bundle was refused.
 */
export type JournalTrouble = 'refused' | 'unreadable' | 'full' | 'outdated' | BundleError;

/** A refused bundle says itself what is wrong with it; else the storage refused. */
export function troubleOf(error: unknown): JournalTrouble {
  if (error instanceof BundleError) return error;
  return isOutdated(error) ? 'outdated' : 'full';
}

/** Why the journal does not open. */
export const openingTrouble = (error: unknown): JournalTrouble =>
  isOutdated(error) ? 'outdated' : 'refused';

/** The database is closed when another page brings it up to date, and does not open when that was done before. */
const isOutdated = (error: unknown) =>
  error instanceof Error && /^(DatabaseClosedError|NewerJournal)$/.test(error.name);

/** What went wrong and what to do, in the language spoken now. */
export const troubleWords = (trouble: JournalTrouble): string =>
  trouble instanceof BundleError ? trouble.message : texts().journal.troubles[trouble];
