import { DEFAULT_LIMITS } from '../grading/limits';
import type { Step } from '../grading/steps';
import type { JournalRecord } from './records';

/** Version of the records that this program writes; bundles and databases of every earlier one are read. */
export const RECORDS_VERSION = 3;

/** A record of any version: only what all of them have is known. */
export type AnyRecord = { readonly kind: string; readonly id: string } & Readonly<Record<string, unknown>>;

/**
 * Brings records up to this version, the same way on every device, so that journals still merge afterwards.
 *
 * What the first version did not keep is null, or the default of its time; nothing of it is dropped but its statements
 * of identity and decision by place, which it never wrote.
 *
 * @param records - All records of a journal or bundle.
 * @param from - The version they were written by, 1 or more.
 * @param to - The version to bring them to; this program's when left out.
 * @throws RangeError for a version newer than this program's.
 */
export function upgradeRecords(
  records: readonly AnyRecord[],
  from: number,
  to = RECORDS_VERSION,
): JournalRecord[] {
  if (from > RECORDS_VERSION) {
    throw new RangeError(
      'This journal was written by a newer Glintgrade. Update the page, then open it again.',
    );
  }
  const second = from < 2 ? records.filter(isKeptFromFirst).map(fromFirst) : records;
  const third = from < 3 && to >= 3 ? second.map(fromSecond) : second;
  return third as unknown as JournalRecord[];
}

const isKeptFromFirst = ({ kind }: AnyRecord) => kind !== 'identity' && kind !== 'decision';

function fromFirst(record: AnyRecord): AnyRecord {
  if (record.kind !== 'check') return record;
  const stones = record.stones as readonly Readonly<Record<string, unknown>>[];
  return {
    ...record,
    faceOf: null,
    material: null,
    limits: DEFAULT_LIMITS[record.step as Step],
    longestPx: null,
    stones: stones.map((stone) => ({
      ...stone,
      cutOff: false,
      highlight: null,
      glossBound: null,
      look: null,
    })),
  };
}

/** The second version did not ask what a batch is of. */
function fromSecond(record: AnyRecord): AnyRecord {
  return record.kind === 'batch' ? { ...record, materials: [], source: '' } : record;
}
