import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Cell, csvText } from '../../src/bundle/csvText';
import { measurementsCsv } from '../../src/bundle/measurementsCsv';
import { batchHistory } from '../../src/history/batchHistory';
import { INVENTED_CM2, inventedBatch, weeksInCoarse } from '../helpers/inventedBatch';
import { readCsv } from '../helpers/readCsv';

const BYTE_ORDER_MARK = '\ufeff';

/** Rows as objects, by the names in the first. */
function tableOf(csv: string): Record<string, string>[] {
  const [names = [], ...rows] = readCsv(csv.slice(1));
  return rows.map((row) => Object.fromEntries(names.map((name, i) => [name, row[i] ?? ''])));
}

// RFC 4180, section 2: the examples of rules 1, 6 and 7.
it.each([
  {
    rows: [
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
    csv: 'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
  },
  {
    rows: [
      ['aaa', 'b\r\nbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
    csv: 'aaa,"b\r\nbb",ccc\r\nzzz,yyy,xxx\r\n',
  },
  { rows: [['aaa', 'b"bb', 'ccc']], csv: 'aaa,"b""bb",ccc\r\n' },
])('writes the example $csv', ({ rows, csv }) => {
  expect(csvText(rows)).toBe(BYTE_ORDER_MARK + csv);
});

it('leaves numbers as they are, and text a spreadsheet would run gets an apostrophe', () => {
  expect(csvText([[-3, 0.5, true, null]])).toBe(`${BYTE_ORDER_MARK}-3,0.5,true,\r\n`);
  for (const text of ['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '\n=1', '＝1']) {
    expect(readCsv(csvText([[text]]).slice(1))).toEqual([[`'${text}`]]);
  }
  expect(csvText([['1-2', 'a=b', "'quoted'"]])).toBe(`${BYTE_ORDER_MARK}1-2,a=b,'quoted'\r\n`);
});

it('gives back every cell to a reader that knows the grammar, and begins no text as a formula', () => {
  const aCell = fc.oneof(
    fc.string({ unit: fc.constantFrom('a', '"', ',', '\r', '\n', '=', '-', '石', ' ') }),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.boolean(),
    fc.constant(null),
  );
  const said = (cell: Cell) => (typeof cell === 'string' ? cell : cell === null ? '' : String(cell));
  fc.assert(
    fc.property(fc.array(fc.array(aCell, { minLength: 1, maxLength: 5 }), { maxLength: 5 }), (rows) => {
      const read = readCsv(csvText(rows).slice(1));
      expect(read.map((row) => row.length)).toEqual(rows.map((row) => row.length));
      rows.flat().forEach((cell, i) => {
        const text = read.flat()[i]!;
        expect([said(cell), `'${said(cell)}`]).toContain(text);
        if (typeof cell === 'string') expect(text).not.toMatch(/^[=+\-@\t\r\n]/);
      });
    }),
  );
});

it('has one row for each stone, photo and check, with what was measured, advised and decided', () => {
  const records = inventedBatch(
    weeksInCoarse([
      [{}, { alpha: 0.1 }],
      [{ pits: 3 }, { pits: 1, fractureMm: 6.25, lengthMm: 29.5 }],
    ]),
    {
      material: 'agate',
    },
  );
  const { batch, checks, stones } = records;
  const about = { batch: batch.id, check: checks[1]!.id, stone: stones[1]!.id };
  const decisions = [{ kind: 'decision', id: '01Z', ...about, action: 'set-aside' } as const];
  const renamed = { ...records, batch: { ...batch, name: '=brook, "finds"' }, decisions };
  const table = tableOf(measurementsCsv([batchHistory(renamed)]));
  expect(table.map(({ day, place, pits }) => `${day} ${place} ${pits}`)).toEqual([
    ...['2026-03-09 1 0', '2026-03-09 2 0', '2026-03-16 1 3', '2026-03-16 2 1'],
  ]);
  expect(table[3]).toMatchObject({
    ...{ batch: '\'=brook, "finds"', step: 'coarse', side: '1', stone: '2', material: 'agate' },
    ...{ source: stones[1]!.source, favorite: 'false', 'length mm': '29.5', 'cut off': 'false' },
    ...{ 'inspected cm2': `${INVENTED_CM2}`, 'pits per cm2': `${1 / INVENTED_CM2}`, 'fractures mm': '6.25' },
    ...{ fractures: '1', chips: '0', 'gloss GU60': '', 'gloss GU60 low': '', alpha: '' },
    ...{ advice: checks[1]!.stones[1]!.action, decision: 'set-aside', 'stone id': stones[1]!.id },
  });
  const { gu60, gu60Low, gu60High } = checks[0]!.stones[1]!.gloss!;
  expect(Number(table[1]!['gloss GU60'])).toBeCloseTo(gu60, 1);
  expect(Number(table[1]!['gloss GU60 low'])).toBeCloseTo(gu60Low, 1);
  expect(Number(table[1]!['gloss GU60 high'])).toBeCloseTo(gu60High, 1);
  expect(table[1]).toMatchObject({ alpha: '0.1', decision: '' });
});

it('has rows for stones that nobody has named, for further sides, and for none', () => {
  const [first, second] = weeksInCoarse([[{}, {}], [{}]]);
  const records = inventedBatch([first!, { ...second!, faceOf: 0 }]);
  const table = tableOf(measurementsCsv([batchHistory({ ...records, identities: [] })]));
  const [check, side] = records.checks;
  expect(
    table.map(({ side: number, stone, 'check id': of, 'photo id': photo }) => [number, stone, of, photo]),
  ).toEqual([
    ...[
      ['1', '', check!.id, check!.id],
      ['1', '', check!.id, check!.id],
    ],
    ['2', '', check!.id, side!.id],
  ]);
  expect(tableOf(measurementsCsv([]))).toEqual([]);
});
