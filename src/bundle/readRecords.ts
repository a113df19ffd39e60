import type { JournalRecord } from '../journal/records';
import { type AnyRecord, RECORDS_VERSION, upgradeRecords } from '../journal/upgradeRecords';
import { BundleError, shown } from './bundleError';
import { BUNDLE_FORMAT } from './bundleFormat';
import { journalRecord } from './recordSchemas';
import { unmetBy } from './unmetBy';

/**
 * Reads the records of a bundle's `journal.json`, bringing those of an older version up to this one.
 *
 * What records point at need not be there: a bundle may hold a part of a journal.
 *
 * @returns In the order of their ids, each id once, fields in the schema's order.
 * @throws BundleError `broken-json`, `other-format`, `newer`, `bad-record` or `differing-records`.
 */
export function readRecords(text: string): JournalRecord[] {
  const { format, version, records } = journalIn(text);
  if (format !== BUNDLE_FORMAT || !isWhole(version) || version < 1 || !Array.isArray(records)) {
    throw new BundleError('other-format');
  }
  if (version > RECORDS_VERSION) throw new BundleError('newer');
  return recordsIn(version < RECORDS_VERSION ? upgraded(records, version) : records);
}

/**
 * Checks records one by one, and that no two differ under one id.
 *
 * @returns As `readRecords` does.
 * @throws BundleError `bad-record` or `differing-records`.
 */
export function recordsIn(records: readonly unknown[]): JournalRecord[] {
  const byId = new Map<string, JournalRecord>();
  records.forEach((record, i) => {
    const read = journalRecord.safeParse(record, { reportInput: true });
    if (!read.success) throw new BundleError('bad-record', `${named(record, i)}: ${unmetBy(read.error)}.`);
    const known = byId.get(read.data.id);
    if (known && JSON.stringify(known) !== JSON.stringify(read.data)) {
      throw new BundleError('differing-records', `The id is ${read.data.id}.`);
    }
    byId.set(read.data.id, read.data);
  });
  return [...byId.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
}

function journalIn(text: string): Readonly<Record<string, unknown>> {
  let journal: unknown;
  try {
    journal = JSON.parse(text);
  } catch {
    throw new BundleError('broken-json');
  }
  if (!isObject(journal)) throw new BundleError('other-format');
  return journal;
}

function upgraded(records: readonly unknown[], version: number): readonly unknown[] {
  records.forEach((record, i) => {
    if (!isObject(record)) throw new BundleError('bad-record', `${named(record, i)}: it is no object.`);
  });
  try {
    return upgradeRecords(records as readonly AnyRecord[], version);
  } catch {
    throw new BundleError(
      'bad-record',
      `It was written as version ${version}, and lacks what that version held.`,
    );
  }
}

function named(record: unknown, index: number): string {
  const { kind, id } = isObject(record) ? record : {};
  const what = typeof kind === 'string' ? `, ${shown(kind)}` : '';
  return `Record ${index + 1}${what}${typeof id === 'string' ? ` ${shown(id)}` : ''}`;
}

const isWhole = (value: unknown): value is number => Number.isInteger(value);

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
