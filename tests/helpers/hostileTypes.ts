import fc from 'fast-check';
import type { RecordKind } from '../../src/journal/records';
import { aRecord } from './arbitraryJournal';
import { type HostileCase, hostile, journalOf, withJournal } from './hostileCase';

/** All ways to the values in a record. */
function waysIn(value: unknown, way: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [way];
  const further = Object.entries(value).flatMap(([key, part]) => waysIn(part, [...way, key]));
  return way.length === 0 ? further : [way, ...further];
}

function replaced(value: unknown, [key, ...rest]: readonly string[], by: unknown): unknown {
  if (key === undefined) return by;
  const copy = (Array.isArray(value) ? [...value] : { ...(value as object) }) as Record<string, unknown>;
  copy[key] = replaced(copy[key], rest, by);
  return copy;
}

const at = (value: unknown, way: readonly string[]) =>
  way.reduce<unknown>((part, key) => (part as Record<string, unknown>)[key], value);

const KINDS: readonly RecordKind[] = [
  'machine',
  'batch',
  'run',
  'stone',
  'check',
  'identity',
  'decision',
  'withdrawal',
  'rig',
];
const SAMPLES = fc.sample(aRecord, { numRuns: 400, seed: 20 });
/** Of a kind, the record with the most in it. */
const fullest = (kind: RecordKind) =>
  SAMPLES.filter((record) => record.kind === kind).reduce((a, b) =>
    waysIn(b).length > waysIn(a).length ? b : a,
  );
/** No field of any record may be one of the first three, and none but a number the last. */
const WRONG = [{ length: 1 }, [7], [[[]]], -7.5e-9];

/** Records of every kind with one field of a wrong type. */
export const TYPES: readonly HostileCase[] = KINDS.map((kind) =>
  hostile(`wrong types in every field of a ${kind}, one by one`, 'bad-record', () => {
    const record = fullest(kind);
    return waysIn(record).map((way, i) => {
      const by = WRONG[i % (typeof at(record, way) === 'number' ? 3 : 4)];
      return withJournal(journalOf([replaced(record, way, by)]));
    });
  }),
);
