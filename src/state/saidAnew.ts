import type { JournalRecord } from '../journal/records';

/** A record that has no id yet: the journal gives it one when it is added. */
export type Saying<R extends JournalRecord = JournalRecord> = R extends JournalRecord ? Omit<R, 'id'> : never;

/** What the owner says of a thing that the journal knows already: a correction of its first record. */
export function saidAnew<R extends JournalRecord>(record: R, change: Partial<R>): Omit<R, 'id'> {
  const { id, ...said } = record;
  return { ...said, ...change, corrects: id } as Omit<R, 'id'>;
}
