import {
  batch,
  type HostileCase,
  holding,
  hostile,
  ID,
  idOf,
  journalOf,
  journalSaying,
  large,
  saying,
  withField,
  withJournal,
} from './hostileCase';

const RECORD = JSON.stringify(batch);
const machine = { kind: 'machine', id: ID, name: 'barrel', type: 'rotary', capacityKg: 1 } as const;
const check = {
  ...{
    kind: 'check',
    id: ID,
    batch: ID,
    step: 'fine',
    day: '2026-03-02',
    mmPerPx: 0.1,
    photo: null,
    stones: [],
  },
};
const numbered = (...numbers: readonly string[]) =>
  saying(...numbers.map((json) => journalSaying(withField('capacityKg', json, machine))));

/** Records with numbers without end, ids and days that are none, and keys that mean something to JavaScript. */
export const VALUES: readonly HostileCase[] = [
  hostile(
    'records that are no objects',
    'bad-record',
    ...holding(null, 7, 'batch', [], [batch], true),
    ...saying(journalSaying('{}')),
  ),
  large('a hundred thousand records', null, () =>
    withJournal(journalOf(Array.from({ length: 100_000 }, (_, i) => ({ ...machine, id: idOf(i) })))),
  ),
  hostile('a hundred thousand records that are none', 'bad-record', () =>
    withJournal(journalOf(Array.from({ length: 100_000 }, () => ({})))),
  ),
  hostile(
    'numbers that are infinite, too large or none',
    'bad-record',
    ...numbered('1e400', '-1e400', '1e999999', '-1', '0', '-0', '1e-400', '"7"', 'true', '{}'),
  ),
  hostile(
    'numbers that JSON does not know',
    'broken-json',
    ...numbered('NaN', 'Infinity', '-Infinity', '0x10', '+1', '1.', '.5', '1_000'),
  ),
  hostile(
    'numbers at the end of what can be told',
    null,
    ...numbered(
      '1.7976931348623157e308',
      '5e-324',
      '1e308',
      '0.1e-300',
      `1${'0'.repeat(300)}`,
      `0.${'3'.repeat(5000)}`,
    ),
  ),
  hostile(
    'days that are none',
    'bad-record',
    ...holding(
      ...[
        '2026-02-30',
        '2026-13-01',
        '+010000-01-01',
        '2026-3-2',
        'today',
        '20260302',
        '2026-03-02T00:00:00Z',
        7,
        null,
      ].map((startedOn) => ({ ...batch, startedOn })),
    ),
  ),
  hostile(
    'days at the ends of the calendar',
    null,
    ...holding(...['0000-01-01', '0001-01-01', '9999-12-31'].map((startedOn) => ({ ...batch, startedOn }))),
  ),
  hostile(
    'ids that are none',
    'bad-record',
    ...holding(
      ...[
        '',
        '01',
        ID.toLowerCase(),
        `${ID}0`,
        `${ID}\n`,
        '__proto__',
        '../../x',
        7,
        null,
        [ID],
        { toString: ID },
      ].map((id) => ({ ...batch, id })),
    ),
  ),
  hostile(
    'ids of a time after which nothing newer could be said',
    'bad-record',
    ...holding(
      ...['7ZZZZZZZZZZZZZZZZZZZZZZZZZ', '0A000000000000000000000000'].map((id) => ({ ...batch, id })),
    ),
  ),
  hostile(
    'two records of one id, alike',
    null,
    ...saying(
      journalSaying(RECORD, RECORD),
      journalSaying(RECORD, `{${RECORD.slice(1, -1).split(',').reverse().join(',')}}`),
    ),
  ),
  hostile(
    'two records of one id that differ',
    'differing-records',
    ...saying(journalSaying(RECORD, withField('name', '"other"')), journalOf([batch, { ...machine }])),
  ),
  hostile(
    '__proto__, constructor and their like as fields',
    'bad-record',
    ...saying(
      ...['__proto__', 'constructor', 'prototype', 'toString', '__defineGetter__'].map((name) =>
        journalSaying(withField(name, '{"isOver":true}')),
      ),
    ),
  ),
  hostile(
    '__proto__ deep in a record',
    'bad-record',
    ...saying(
      journalOf([{ ...check, faceOf: null, material: null, longestPx: null, limits: 0 }]).replace(
        '"limits":0',
        '"limits":{"__proto__":{"maxPitsPerCm2":1}}',
      ),
      journalSaying(withField('machine', '{"__proto__":{"x":1}}')),
    ),
  ),
  hostile(
    '__proto__ instead of a journal',
    'other-format',
    ...saying(`{"__proto__":${journalOf([batch])}}`, `{"constructor":{"prototype":${journalOf([batch])}}}`),
  ),
  hostile(
    '__proto__ beside a good journal',
    null,
    ...saying(
      `{"__proto__":{"isOver":true},"constructor":{"prototype":{"isOver":true}},${journalOf([batch]).slice(1)}`,
    ),
  ),
  hostile(
    '__proto__ and constructor for a kind, a step, a material',
    'bad-record',
    ...holding(
      ...['__proto__', 'constructor', 'hasOwnProperty'].flatMap((name) => [
        { ...batch, kind: name },
        { ...batch, materials: [name] },
        {
          kind: 'run',
          id: ID,
          batch: ID,
          machine: null,
          step: name,
          startedOn: '2026-03-02',
          endedOn: null,
          charge: '',
        },
      ]),
    ),
  ),
  hostile(
    'first versions that lack what they held',
    'bad-record',
    ...[
      { ...check, stones: undefined },
      { ...check, stones: null },
      { ...check, stones: { length: 1e9 } },
      { ...check, stones: 'abc' },
      { ...check, stones: [null] },
      { ...check, stones: [7] },
      { ...check, step: '__proto__' },
      { ...check, step: 'constructor' },
      { ...check, mmPerPx: 0 },
      { ...batch, materials: undefined, id: 7 },
      null,
      7,
      [],
    ].map((record) => () => withJournal(journalOf([record], 1))),
  ),
  hostile(
    'first versions that hold what they did not know',
    null,
    ...[
      { ...check, limits: '<script>', faceOf: { a: 1 }, longestPx: 1e9 },
      { kind: 'identity', id: 7, stones: 'x' },
      { kind: 'decision' },
    ].map((record) => () => withJournal(journalOf([record], 1))),
  ),
  hostile('a second version with fields of the third', null, () =>
    withJournal(journalOf([{ ...batch, materials: '<script>', source: { a: 1 } }], 2)),
  ),
];
