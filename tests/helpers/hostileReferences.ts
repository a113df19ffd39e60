import type { CheckRecord } from '../../src/journal/records';
import { CHECKS, FIRST, OWN, SECOND, THIRD, WHOLE } from './hostileBatch';
import { batch, type HostileCase, hostile, ID, idOf, journalOf, withJournal } from './hostileCase';

/** The check with some of its fields said anew. */
const checkSaying = (part: object) => ({ ...CHECKS[0]!, ...part });
const about = { batch: OWN, check: FIRST };
const turned = (...faceOf: readonly (string | null)[]) =>
  WHOLE.map((record) => {
    const at = CHECKS.findIndex(({ id }) => id === record.id);
    return at < 0 ? record : { ...record, faceOf: faceOf[at] ?? null };
  });
const correcting = (id: string, corrects: string) => ({ ...batch, id, corrects, name: id });
const holds = (what: string, ...journals: readonly (readonly unknown[])[]) =>
  hostile(what, null, ...journals.map((records) => () => withJournal(journalOf(records))));
const spiral = Array.from({ length: 5000 }, (_, i) => [
  1000 + i * Math.sin(i / 9),
  1000 + i * Math.cos(i / 9),
]);
const stone = CHECKS[0]!.stones[0]!;

function sized(check: CheckRecord, size: number): unknown {
  const all = { lengthMm: size, widthMm: size, areaMm2: size, inspectedCm2: size };
  const byIndex = [{ n: 1, alpha: size, alphaLow: size, alphaHigh: size }];
  return {
    ...check,
    mmPerPx: size || 1e-300,
    stones: check.stones.map((one) => ({ ...one, ...all, highlight: { byIndex } })),
  };
}

/** Records that point at nothing, at themselves or in circles, and that hold as much as they may. */
export const REFERENCES: readonly HostileCase[] = [
  holds(
    'withdrawals of nothing, of themselves and of the batch',
    ...[idOf(99), idOf(5), OWN].map((of) => [
      ...WHOLE,
      { kind: 'withdrawal', id: idOf(5), batch: OWN, of, isWithdrawn: true },
    ]),
  ),
  holds('identities of no check and of no stone', [
    ...WHOLE,
    {
      kind: 'identity',
      id: idOf(5),
      batch: OWN,
      check: idOf(99),
      stones: [{ place: 1, stone: idOf(98), confidence: 1 }],
    },
    { kind: 'identity', id: idOf(6), ...about, stones: [{ place: 9999, stone: idOf(98), confidence: null }] },
  ]),
  holds('two stones at one place, and one stone at all', [
    ...WHOLE,
    {
      kind: 'identity',
      id: idOf(5),
      ...about,
      stones: [1, 1, 2].map((place) => ({ place, stone: WHOLE[1]!.id, confidence: 0 })),
    },
  ]),
  holds('decisions about nothing', [
    ...WHOLE,
    { kind: 'decision', id: idOf(5), batch: idOf(97), check: idOf(99), stone: idOf(98), action: 'finished' },
    { kind: 'decision', id: idOf(6), ...about, stone: idOf(98), action: 'advance' },
  ]),
  holds('runs in machines that are none, ended before they began', [
    ...WHOLE,
    {
      kind: 'run',
      id: idOf(5),
      batch: OWN,
      machine: OWN,
      step: 'fine',
      startedOn: '9999-12-31',
      endedOn: '0001-01-01',
      charge: '',
    },
    {
      kind: 'run',
      id: idOf(6),
      batch: OWN,
      machine: OWN,
      step: 'fine',
      startedOn: '9999-12-31',
      endedOn: null,
      charge: '',
    },
  ]),
  holds('a record that corrects itself', [correcting(ID, ID)]),
  holds(
    'records that correct each other in a circle',
    [correcting(idOf(1), idOf(2)), correcting(idOf(2), idOf(1))],
    [correcting(idOf(1), idOf(3)), correcting(idOf(2), idOf(1)), correcting(idOf(3), idOf(2))],
  ),
  holds('a record that corrects one of another kind, or nothing', [
    ...WHOLE,
    { ...batch, corrects: FIRST },
    correcting(idOf(9), idOf(97)),
  ]),
  holds('a check that is another side of itself', turned(FIRST)),
  holds(
    'checks that are sides of each other in a circle',
    turned(SECOND, FIRST),
    turned(SECOND, THIRD, FIRST),
  ),
  holds('sides of sides, and sides of nothing', turned(null, FIRST, SECOND), turned(idOf(99), idOf(99), OWN)),
  holds('records of the last time that an id may tell', [
    ...WHOLE,
    correcting('03ZZZZZZZZZZZZZZZZZZZZZZZZ', OWN),
  ]),
  holds('a photo that is not there', [...WHOLE.slice(0, 3), checkSaying({ photo: 'ab'.repeat(32) })]),
  holds('a thousand stones at one place', [
    ...WHOLE.slice(0, 3),
    checkSaying({ stones: Array.from({ length: 1000 }, () => stone) }),
    { kind: 'identity', id: idOf(5), ...about, stones: [{ place: 1, stone: WHOLE[1]!.id, confidence: 1 }] },
  ]),
  holds('an outline of five thousand points, and one that lies far out', [
    ...WHOLE.slice(0, 3),
    checkSaying({
      stones: [
        { ...stone, outline: spiral },
        {
          ...stone,
          place: 2,
          outline: [
            [1e308, -1e308],
            [-1e308, 1e308],
            [5e-324, 0],
          ],
        },
      ],
    }),
    ...WHOLE.filter(({ kind }) => kind === 'identity'),
  ]),
  holds(
    'sizes and shares at the ends of what numbers can tell',
    ...[0, 5e-324, 1e308].map((size) =>
      WHOLE.map((record) => (record.kind === 'check' ? sized(record, size) : record)),
    ),
  ),
  hostile('one stone more than a check may have', 'bad-record', () =>
    withJournal(journalOf([checkSaying({ stones: Array.from({ length: 1001 }, () => stone) })])),
  ),
  hostile(
    'texts longer than may be',
    'bad-record',
    ...[
      { ...batch, name: 'x'.repeat(201) },
      { ...batch, source: 'x'.repeat(1e6) },
      checkSaying({ stones: [{ ...stone, reasons: ['x'.repeat(2001)] }] }),
    ].map((record) => () => withJournal(journalOf([record]))),
  ),
];
