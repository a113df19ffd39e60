import {
  batch,
  type HostileCase,
  hostile,
  JPEG,
  journalFile,
  journalOf,
  large,
  withFiles,
} from './hostileCase';
import { bytesOf, deflated, joined, littleEndian, type RawFile, rawZip } from './rawZip';

const HEAD = '{"format":"glintgrade journal","version":3,"records":[\n';
const spaces = (mib: number) =>
  joined([bytesOf(journalOf([batch])), new Uint8Array(mib * 2 ** 20).fill(0x20)]);
/** A JPEG's beginning and then nothing but zeros. */
const hollow = (bytes: number) => joined([JPEG, new Uint8Array(bytes - JPEG.length)]);
const key = (i: number) => i.toString(16).padStart(64, '0');
const inner = (levels: number): Uint8Array<ArrayBuffer> =>
  levels === 0 ? deflated(spaces(1)) : deflated(joined([inner(levels - 1), inner(levels - 1)]));

/** Where the first file behind the journal begins. */
const BEHIND = 30 + 'journal.json'.length + journalFile().content.length;

function overlapping(): Blob {
  const content = hollow(2 ** 16);
  const packed = deflated(content);
  const many = Array.from(
    { length: 200 },
    (_, i): RawFile => ({
      ...{ content, packed, name: `photos/${key(i)}.jpg`, isUnwritten: i > 0, central: { headerAt: BEHIND } },
    }),
  );
  return withFiles(...many);
}

/** A file whose content holds the header of another. */
function nested(): Blob {
  const name = 'read me.txt';
  const header = joined([
    littleEndian([0x04034b50, 4], [20, 2], [0, 2], [0, 2], [0, 2], [0x21, 2]),
    littleEndian([0, 4], [0, 4], [0, 4], [name.length, 2], [0, 2]),
    bytesOf(name),
  ]);
  const headerAt = BEHIND + 30 + 'outer'.length;
  return withFiles(
    { name: 'outer', content: header },
    { name, content: '', isUnwritten: true, central: { headerAt } },
  );
}

function thousandfold(): Blob {
  const content = hollow(2 ** 24);
  const packed = deflated(content);
  return withFiles(
    ...Array.from({ length: 12 }, (_, i) => ({ name: `photos/${key(i)}.jpg`, content, packed })),
  );
}

function withRepeated(part: string, head = HEAD, tail = ''): Blob {
  const block = bytesOf(part.repeat(Math.floor(2 ** 20 / part.length)));
  const all = new Uint8Array(2 ** 28).fill(0x20);
  all.set(bytesOf(head));
  for (let at = head.length; at + block.length <= all.length - tail.length; at += block.length)
    all.set(block, at);
  all.set(bytesOf(tail), all.length - tail.length);
  return rawZip([{ name: 'journal.json', content: all, isDeflated: true }]);
}

/** Bundles that unpack to, or are said to unpack to, far more than they are. */
export const BOMBS: readonly HostileCase[] = [
  hostile('overlapping pictures, one for two hundred', 'damaged', overlapping),
  hostile('a file that lies within another', 'damaged', nested),
  hostile('pictures that unpack to a thousand times their size', 'too-large', thousandfold),
  large('a journal as large as may be, of spaces', 'broken-json', () =>
    rawZip([{ ...journalFile(), content: joined([bytesOf('{"records":['), spaces(255)]), isDeflated: true }]),
  ),
  large('a journal as large as may be, of empty objects', 'too-large', () => withRepeated('{},')),
  large('a journal as large as may be, of empty lists', 'too-large', () => withRepeated('[],')),
  large('a journal as large as may be, of opening brackets', 'broken-json', () => withRepeated('[')),
  large('a journal as large as may be, in one text of one record', 'bad-record', () =>
    withRepeated('a', `${HEAD}{"kind":"batch","id":"`, '"}\n]}\n'),
  ),
  hostile('a journal said to be larger than may be', 'too-large', () =>
    rawZip([{ ...journalFile(), central: { bytes: 2 ** 28 + 1 } }]),
  ),
  hostile('files said to be small, together more than may be', 'too-large', () =>
    withFiles(
      ...Array.from({ length: 260 }, (_, i) => ({ name: `${i}`, content: 'x', central: { bytes: 2 ** 24 } })),
    ),
  ),
  large('as many files as a zip can list', null, () =>
    withFiles(...Array.from({ length: 65_533 }, (_, i) => ({ name: `${i}`, content: '' }))),
  ),
  hostile('zips in zips in zips', null, () => withFiles({ name: 'more.zip', content: inner(5) })),
];
