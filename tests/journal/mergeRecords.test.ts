import fc from 'fast-check';
import { expect, it } from 'vitest';
import { currentRecords } from '../../src/history/currentRecords';
import { mergeRecords } from '../../src/journal/mergeRecords';
import type { BatchRecord, JournalRecord } from '../../src/journal/records';
import { batchRecord as batch } from '../helpers/batchRecord';

/** Few ids, so that journals overlap and corrections meet what they correct. */
const anId = fc.integer({ min: 0, max: 14 }).map((k) => `01J${k.toString(36).toUpperCase()}`);
const aRecord = fc
  .tuple(anId, fc.constantFrom('a', 'b'), fc.option(anId, { nil: undefined }))
  .map(([id, name, corrects]) => batch(id, name, corrects === id ? undefined : corrects));
const aJournal = fc.array(aRecord, { maxLength: 20 }).map((records) => mergeRecords(records, []));

it('keeps every record of both journals, in the order they were made', () => {
  const merged = mergeRecords([batch('01C', 'c'), batch('01A', 'a')], [batch('01B', 'b')]);
  expect(merged.map(({ id }) => id)).toEqual(['01A', '01B', '01C']);
});

// Laws of a union: Shapiro et al. 2011, "Conflict-free replicated data types" (join of a semilattice).
it('is idempotent, commutative and associative, and loses nothing', () => {
  fc.assert(
    fc.property(aJournal, aJournal, aJournal, (a, b, c) => {
      const ids = (records: readonly JournalRecord[]) => new Set(records.map(({ id }) => id));
      expect(mergeRecords(a, a)).toEqual(a);
      expect(mergeRecords(a, b)).toEqual(mergeRecords(b, a));
      expect(mergeRecords(mergeRecords(a, b), c)).toEqual(mergeRecords(a, mergeRecords(b, c)));
      expect(ids(mergeRecords(a, b))).toEqual(new Set([...ids(a), ...ids(b)]));
    }),
  );
});

it('keeps the same one of two records that differ under one id, whatever the order of their fields', () => {
  const [one, other] = [batch('01A', 'b'), batch('01A', 'a')];
  expect(mergeRecords([one], [other])).toEqual([other]);
  expect(mergeRecords([other], [one])).toEqual([other]);
  const turned = Object.fromEntries(Object.entries(other).reverse()) as unknown as BatchRecord;
  expect(mergeRecords([turned], [other])).toHaveLength(1);
});

it('shows each thing as it was last said, under its first id', () => {
  const records = [
    batch('01C', 'third name', '01A'),
    batch('01A', 'first name'),
    batch('01B', 'second', '01A'),
  ];
  expect(currentRecords(records)).toEqual([batch('01A', 'third name')]);
});

it('shows the same whatever order the records come in', () => {
  fc.assert(
    fc.property(aJournal, fc.integer({ min: 0, max: 20 }), (records, by) => {
      const turned = [...records.slice(by), ...records.slice(0, by)];
      expect(currentRecords(turned)).toEqual(currentRecords(records));
    }),
  );
});
