import { batch, type HostileCase, hostile, journalOf, journalSaying, saying, withField } from './hostileCase';
import { bytesOf, joined, rawZip } from './rawZip';

const RECORD = JSON.stringify(batch);
const writtenAs = (...encoded: readonly Uint8Array<ArrayBuffer>[]) =>
  encoded.map((content) => () => rawZip([{ name: 'journal.json', content }]));

function utf16(text: string, isLittle: boolean): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(2 * text.length);
  const view = new DataView(bytes.buffer);
  for (let i = 0; i < text.length; i++) view.setUint16(2 * i, text.charCodeAt(i), isLittle);
  return bytes;
}

/** What is no JSON, no journal, or JSON at the edge of its grammar. */
export const JOURNALS: readonly HostileCase[] = [
  hostile('an empty journal.json, and one of spaces', 'broken-json', ...saying('', '  \n ')),
  hostile('half a journal.json', 'broken-json', ...saying(journalOf([batch]).slice(0, -1), '{"format":')),
  hostile('two journals one after the other', 'broken-json', ...saying(journalOf([]) + journalOf([]))),
  hostile(
    'what is nearly JSON',
    'broken-json',
    ...saying(
      `${journalOf([]).slice(0, -1)},}`,
      `// mine\n${journalOf([])}`,
      "{'format':1}",
      '{format:1}',
      'NaN',
      '{"a":01}',
    ),
  ),
  hostile(
    'JSON that is no object',
    'other-format',
    ...saying('null', '7', '"journal"', '[]', `[${journalOf([])}]`),
  ),
  hostile('a byte order mark before the JSON', null, ...saying(`\ufeff${journalOf([batch])}`)),
  hostile(
    'JSON in UTF-16 and UTF-32',
    'broken-json',
    ...writtenAs(
      utf16(`\ufeff${journalOf([batch])}`, true),
      utf16(`\ufeff${journalOf([batch])}`, false),
      utf16(journalOf([batch]), true),
      utf16([...journalOf([batch])].join('\0'), true),
    ),
  ),
  hostile(
    'bytes that are not UTF-8',
    'broken-json',
    ...writtenAs(
      joined([bytesOf('{"format":"'), Uint8Array.of(0xff), bytesOf('"}')]),
      joined([bytesOf('{"format":"'), Uint8Array.of(0xed, 0xa0, 0x80), bytesOf('"}')]),
      joined([bytesOf('{"format":"'), Uint8Array.of(0xc0, 0xae), bytesOf('"}')]),
    ),
  ),
  hostile(
    'surrogates that stand alone',
    null,
    ...saying(journalSaying(withField('name', '"\\ud800 \\udc00 \\ud83d"'))),
  ),
  hostile(
    'NUL and other control characters in a name, escaped',
    null,
    ...saying(journalSaying(withField('name', '"\\u0000\\u0007\\u001b[31m\\u0085"'))),
  ),
  hostile(
    'control characters in a name, as they are',
    'broken-json',
    ...saying(journalSaying(withField('name', '"\u0000"'))),
  ),
  hostile(
    'lists a million deep',
    'broken-json',
    ...saying('['.repeat(1e6), `${'['.repeat(1e6)}${']'.repeat(1e6)}`),
  ),
  hostile(
    'objects and lists a hundred deep in a record',
    'broken-json',
    ...saying(journalSaying(withField('name', '{"a":['.repeat(50) + ']}'.repeat(50)))),
  ),
  hostile(
    'brackets without end in a name',
    null,
    ...saying(journalSaying(withField('name', `"${'[{'.repeat(100)}"`))),
  ),
  hostile(
    'keys given twice, of which the last counts',
    null,
    ...saying(
      journalSaying(RECORD.replace('"name"', '"name":7,"name"')),
      journalOf([batch]).replace('"version"', '"version":99,"version"'),
      journalOf([batch]).replace('"records"', '"records":[7],"records"'),
    ),
  ),
  hostile(
    'keys given twice, the last of them wrong',
    'bad-record',
    ...saying(journalSaying(RECORD.replace('"isOver"', '"name":7,"isOver"'))),
  ),
  hostile(
    'records that are no list',
    'other-format',
    ...saying(
      ...['{}', 'null', '"x"', '{"length":9}', '7'].map(
        (records) => `{"format":"glintgrade journal","version":3,"records":${records}}`,
      ),
    ),
  ),
  hostile(
    'versions that are none',
    'other-format',
    ...saying(
      ...['"3"', '0', '-1', '2.5', 'null', '[3]', '1e400', '-1e400', 'true'].map((version) =>
        journalSaying().replace('3', version),
      ),
    ),
  ),
  hostile(
    'newer versions',
    'newer',
    ...saying(
      ...['4', '4e3', '9007199254740993', '1e300'].map((version) => journalSaying().replace('3', version)),
    ),
  ),
  hostile(
    'another format',
    'other-format',
    ...saying(
      journalOf([]).replace('glintgrade', 'GLINTGRADE'),
      '{"format":["glintgrade journal"],"version":3,"records":[]}',
    ),
  ),
];
