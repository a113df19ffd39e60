import type { JournalRecord } from './records';

/**
 * The union of two journals. Records are never changed, so the same id means the same record; should two differ under
 * one id after all (a damaged file), the same one of them is kept whichever way round they are merged.
 *
 * Merging is idempotent, commutative and associative, and loses no id.
 *
 * @returns Records in the order of their ids, which is the order they were made in.
 */
export function mergeRecords(
  some: readonly JournalRecord[],
  others: readonly JournalRecord[],
): JournalRecord[] {
  const byId = new Map<string, JournalRecord>();
  for (const record of [...some, ...others]) {
    const known = byId.get(record.id);
    if (!known || canonical(record) < canonical(known)) byId.set(record.id, record);
  }
  return [...byId.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** Whether two records say the same, whatever the order of their fields. */
export const isSame = (one: JournalRecord, other: JournalRecord): boolean =>
  canonical(one) === canonical(other);

/** The same text for the same content, whatever the order of its fields. */
function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  const fields = Object.entries(value)
    .filter(([, field]) => field !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${fields.map(([name, field]) => `${JSON.stringify(name)}:${canonical(field)}`).join(',')}}`;
}
