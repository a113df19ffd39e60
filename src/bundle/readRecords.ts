import type { JournalRecord } from '../journal/records';
import { type AnyRecord, RECORDS_VERSION, upgradeRecords } from '../journal/upgradeRecords';
import { type Pace, paceOf } from '../progress/pace';
import { BundleError, type BundlePart, shown } from './bundleError';
import { BUNDLE_FORMAT } from './bundleFormat';
import { parseJournal } from './parseJournal';
import { journalRecord } from './recordSchemas';
import { unmetBy } from './unmetBy';

/** Share of the time that parsing takes; checking takes the rest (`npm run bench:bundle`). */
const PARSED = 0.4;

/**
 * Reads the records of a bundle's `journal.json`, bringing those of an older version up to this one.
 *
 * What records point at need not be there: a bundle may hold a part of a journal.
 *
 * @param json - In UTF-8.
 * @returns In the order of their ids, each id once, fields in the schema's order.
 * @throws BundleError `broken-json`, `other-format`, `newer`, `bad-record` or `differing-records`.
 * @throws What `pace` throws.
 */
export async function readRecords(json: Uint8Array, pace = paceOf()): Promise<JournalRecord[]> {
  const journal = await parseJournal(json, pace.part(0, PARSED));
  if (!isObject(journal)) throw new BundleError('other-format');
  const { format, version, records } = journal;
  if (format !== BUNDLE_FORMAT || !isWhole(version) || version < 1 || !Array.isArray(records)) {
    throw new BundleError('other-format');
  }
  if (version > RECORDS_VERSION) throw new BundleError('newer');
  const now = version < RECORDS_VERSION ? upgraded(records, version) : records;
  return recordsInTurns(now, pace.part(PARSED, 1));
}

/**
 * Checks records one by one, and that no two differ under one id.
 *
 * @returns As `readRecords` does.
 * @throws BundleError `bad-record` or `differing-records`.
 */
export function recordsIn(records: readonly unknown[]): JournalRecord[] {
  const { take, taken } = recordTaker();
  records.forEach(take);
  return taken();
}

/**
 * As `recordsIn`, a record at a time.
 *
 * @throws BundleError `bad-record` or `differing-records`.
 * @throws What `pace` throws.
 */
export async function recordsInTurns(records: readonly unknown[], pace: Pace): Promise<JournalRecord[]> {
  const { take, taken } = recordTaker();
  for (const [i, record] of records.entries()) {
    take(record, i);
    await pace.at((i + 1) / records.length);
  }
  return taken();
}

function recordTaker() {
  const byId = new Map<string, JournalRecord>();
  const take = (record: unknown, i: number) => {
    const read = journalRecord.safeParse(record, { reportInput: true });
    if (!read.success) {
      const { error } = read;
      const name = nameOf(record, i);
      throw new BundleError('bad-record', (parts) => parts.unmet(name(parts), unmetBy(error)));
    }
    const known = byId.get(read.data.id);
    if (known && JSON.stringify(known) !== JSON.stringify(read.data)) {
      throw new BundleError('differing-records', (parts) => parts.id(read.data.id));
    }
    byId.set(read.data.id, read.data);
  };
  return { take, taken: () => [...byId.values()].sort((a, b) => (a.id < b.id ? -1 : 1)) };
}

function upgraded(records: readonly unknown[], version: number): readonly unknown[] {
  records.forEach((record, i) => {
    if (isObject(record)) return;
    const name = nameOf(record, i);
    throw new BundleError('bad-record', (parts) => parts.noObject(name(parts)));
  });
  try {
    return upgradeRecords(records as readonly AnyRecord[], version);
  } catch {
    throw new BundleError('bad-record', (parts) => parts.lacking(version));
  }
}

function nameOf(record: unknown, index: number): BundlePart {
  const { kind, id } = isObject(record) ? record : {};
  const quoted = (value: unknown) => (typeof value === 'string' ? shown(value) : null);
  return (parts) => parts.record(index + 1, quoted(kind), quoted(id));
}

const isWhole = (value: unknown): value is number => Number.isInteger(value);

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
