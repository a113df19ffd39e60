import type { JournalRecord } from '../journal/records';

/**
 * Each thing as it was last said: the newest of a first record and its corrections, under the first one's id.
 *
 * @param records - Any part of a journal, in any order.
 * @returns One record for each thing, in the order of their ids; a correction whose first record is missing stands for it.
 */
export function currentRecords<T extends JournalRecord>(records: readonly T[]): T[] {
  const newest = new Map<string, T>();
  for (const record of records) {
    const thing = record.corrects ?? record.id;
    const known = newest.get(thing);
    if (!known || record.id > known.id) newest.set(thing, record);
  }
  return [...newest]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([id, record]) => {
      const { corrects: _, ...said } = record;
      return { ...said, id } as T;
    });
}
