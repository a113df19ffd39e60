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

it('leaves numbers as they are', () => {
  const numbers = [-3, 0.5, -1e-7, 1e308, true, null] as const;
  expect(csvText([numbers])).toBe(`${BYTE_ORDER_MARK}-3,0.5,-1e-7,1e+308,true,\r\n`);
  expect(
    readCsv(csvText([numbers]).slice(1))[0]!
      .slice(0, 4)
      .map(Number),
  ).toEqual(numbers.slice(0, 4));
  expect(csvText([['1-2', 'a=b', "'quoted'", 'a; b', 'x\ny', '3 + 4', '']])).toBe(
    `${BYTE_ORDER_MARK}1-2,a=b,'quoted',"a; b","x\ny",3 + 4,\r\n`,
  );
});

// OWASP, "CSV Injection" (from memory): cells beginning with = + - @, tab, carriage return or line feed, or with the
// full-width forms of the signs, get a single quote in front; and separators and quotes must not begin a new cell.
it.each([
  ['=1+1', "'=1+1"],
  ['+1', "'+1"],
  ['-1', "'-1"],
  ['@SUM(A1)', "'@SUM(A1)"],
  ['\tx', "'\tx"],
  ['\rx', "'\rx"],
  ['\nx', "'\nx"],
  ['\t=1', "'\t'=1"],
  ['＝1', "'＝1"],
  ['＋1', "'＋1"],
  ['－1', "'－1"],
  ['＠1', "'＠1"],
  ['﹦1', "'﹦1"],
  [' =1', " '=1"],
  ['\ufeff=1', "\ufeff'=1"],
  ['\u200b\u202e=1', "\u200b\u202e'=1"],
  ['\u0000=1', "\u0000'=1"],
  ['a;=1;-2', "a;'=1;'-2"],
  ['a\t=1', "a\t'=1"],
  ['a\r\n=1', "a\r\n'=1"],
  ['a; @1', "a; '@1"],
  ['","=1', '","=1'],
  ["=cmd|' /C x'!A0", "'=cmd|' /C x'!A0"],
  ['=HYPERLINK("x","y")', `'=HYPERLINK("x","y")`],
])('puts an apostrophe before what a spreadsheet would run in %j', (text, written) => {
  const csv = csvText([['first', text, 'last']]);
  expect(readCsv(csv.slice(1))).toEqual([['first', written, 'last']]);
});

it('begins no cell as a formula, by whatever a spreadsheet parts cells, and whether or not it heeds quotes', () => {
  const aText = fc.string({
    unit: fc.constantFrom('a', ';', '\t', '\r', '\n', '=', '-', '＋', ' ', '\u200b'),
  });
  fc.assert(
    fc.property(fc.array(aText, { minLength: 1, maxLength: 4 }), (texts) => {
      const csv = csvText([texts]).slice(1);
      for (const cell of csv.split(/[;\t\r\n]/)) expect(cell).not.toMatch(/^[\p{Z}\p{C}]*[=\-＋]/u);
      for (const cell of readCsv(csv)[0]!) expect(cell).not.toMatch(/^([\p{Z}\p{C}]*[=\-＋]|[\t\r\n])/u);
    }),
    { numRuns: 2000 },
  );
});

it('gives back every cell, but for apostrophes, to a reader that knows the grammar', () => {
  const aCell = fc.oneof(
    fc.string({ unit: fc.constantFrom('a', '"', ',', '\r', '\n', '=', '-', '石', ' ') }),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.boolean(),
    fc.constant(null),
  );
  const said = (cell: Cell) => (cell === null ? '' : String(cell));
  const bare = (text: string) => text.replaceAll("'", '');
  fc.assert(
    fc.property(fc.array(fc.array(aCell, { minLength: 1, maxLength: 5 }), { maxLength: 5 }), (rows) => {
      const read = readCsv(csvText(rows).slice(1));
      expect(read.map((row) => row.length)).toEqual(rows.map((row) => row.length));
      rows.flat().forEach((cell, i) => {
        const text = read.flat()[i]!;
        expect(typeof cell === 'string' ? bare(text) : text).toBe(said(cell));
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
