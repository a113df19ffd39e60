import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { z } from 'zod/mini';
import { publishedSchema } from '../../src/bundle/publishedSchema';
import { recordsIn } from '../../src/bundle/readRecords';
import { journalRecord } from '../../src/bundle/recordSchemas';
import { gradeStone } from '../../src/grading/gradeStone';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import { checkRecord } from '../../src/journal/checkRecord';
import { recordId } from '../../src/journal/recordId';
import type { JournalRecord, RecordKind } from '../../src/journal/records';
import { aRecord } from '../helpers/arbitraryJournal';
import { batchRecord } from '../helpers/batchRecord';
import { inventedReport } from '../helpers/inventedReport';

/** The same type but that its parts may be written to, at every depth. */
type Writable<T> = T extends object ? { -readonly [K in keyof T]: Writable<T[K]> } : T;
/** True only for types that are the same in both directions, optional fields and literals included. */
type Same<A, B> = (<X>() => X extends A ? 1 : 2) extends <X>() => X extends B ? 1 : 2 ? true : false;
type Agreement = Same<Writable<JournalRecord>, Writable<z.output<typeof journalRecord>>>;

const ID = '01ARZ3NDEKTSV4RRFFQ69G5FAV';
const batch = batchRecord(ID, 'river finds');

it('agrees with the types of all records, both ways', () => {
  // `npm run typecheck` fails here when the schema and src/journal/records.ts come apart in any field of any kind.
  const agrees: Agreement = true;
  const kinds = journalRecord._zod.def.options.map(({ shape }) => shape.kind._zod.def.values[0]);
  const known: readonly RecordKind[] = [
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
  expect({ agrees, kinds }).toEqual({ agrees: true, kinds: known });
});

it('takes in records of all kinds as they are', () => {
  fc.assert(
    fc.property(aRecord, (record) => {
      expect(recordsIn([record])).toEqual([record]);
    }),
  );
});

it('takes in the check of a whole tray', () => {
  const report = inventedReport();
  const settings = { step: 'coarse', material: 'agate', limits: null } as const;
  const grades = report.stones.map((stone) => gradeStone(stone, settings));
  const [id, batch] = [recordId(), recordId()];
  const about = {
    step: 'coarse',
    material: 'agate',
    limits: DEFAULT_LIMITS.coarse,
    day: '2026-03-02',
  } as const;
  const check = checkRecord({ id, batch, faceOf: null, photo: 'a'.repeat(64), ...about }, report, grades);
  expect(recordsIn([check])).toEqual([check]);
});

// ULID: github.com/ulid/spec: ten letters of base 32 for the milliseconds since 1970, I, L, O and U left out. An id of
// the last time that can be told, 7ZZZ…, would be newer than all that is said later: taken in are times up to 2109.
// ISO 8601: 2028 is a leap year, 2026 and 2100 are not.
it.each([
  { part: { id: '03ZZZZZZZZZZZZZZZZZZZZZZZZ' }, unmet: null },
  { part: { id: '04000000000000000000000000' }, unmet: 'id is not written as it must be' },
  { part: { id: '7ZZZZZZZZZZZZZZZZZZZZZZZZZ' }, unmet: 'id is not written as it must be' },
  { part: { id: '80000000000000000000000000' }, unmet: 'id is not written as it must be' },
  { part: { id: ID.toLowerCase() }, unmet: 'id is not written as it must be' },
  { part: { id: `${ID.slice(0, 25)}U` }, unmet: 'id is not written as it must be' },
  { part: { corrects: null }, unmet: 'corrects must be string' },
  { part: { startedOn: '2028-02-29' }, unmet: null },
  { part: { startedOn: '2026-02-29' }, unmet: 'startedOn must be a day that exists, YYYY-MM-DD' },
  { part: { startedOn: '2100-02-29' }, unmet: 'startedOn must be a day that exists, YYYY-MM-DD' },
  { part: { startedOn: '2026-3-2' }, unmet: 'startedOn must be a day that exists, YYYY-MM-DD' },
  { part: { name: 'n'.repeat(200) }, unmet: null },
  { part: { name: 'n'.repeat(201) }, unmet: 'name must be at most 200 letters long' },
  { part: { name: undefined }, unmet: 'name must be there, as string' },
  { part: { isOver: 1 }, unmet: 'isOver must be boolean' },
  { part: { kind: 'barrel' }, unmet: 'kind is of no kind that is known' },
  { part: { color: 'red' }, unmet: 'it has a field that is not known, “color”' },
])('holds $part against what a batch must be', ({ part, unmet }) => {
  const read = () => recordsIn([{ ...batch, ...part }]);
  if (unmet === null) expect(read()).toHaveLength(1);
  else expect(read).toThrow(unmet);
});

it('names the field deep inside a check, and its range', () => {
  const identity = { kind: 'identity', id: ID, batch: ID, check: ID };
  const stones = [{ place: 1, stone: ID, confidence: 1.5 }];
  expect(() => recordsIn([batch, { ...identity, stones }])).toThrow(
    `Record 2, “identity” “${ID}”: stones.0.confidence must be at most 1.`,
  );
  const none = [{ place: 0, stone: ID, confidence: null }];
  expect(() => recordsIn([{ ...identity, stones: none }])).toThrow('stones.0.place must be at least 1');
  const machine = { kind: 'machine', id: ID, name: 'barrel', type: 'rotary', capacityKg: Number.NaN };
  expect(() => recordsIn([machine])).toThrow('capacityKg must be number');
  expect(() => recordsIn([{ ...machine, capacityKg: 0 }])).toThrow('capacityKg must be more than 0');
  expect(() => recordsIn([{ ...machine, type: 'square' }])).toThrow('type must be one of rotary, vibratory');
});

it('is published as the JSON Schema beside it', () => {
  // After a change of the records: node .config/run.mjs tests/bundle/writeSchema.ts
  const file = new URL('../../src/bundle/journal.schema.json', import.meta.url);
  expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual(JSON.parse(JSON.stringify(publishedSchema())));
});
