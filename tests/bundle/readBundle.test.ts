import { strToU8, unzipSync, zipSync } from 'fflate';
import { expect, it } from 'vitest';
import type { BundleErrorCode } from '../../src/bundle/bundleError';
import { crc32 } from '../../src/bundle/crc32';
import { readBundle } from '../../src/bundle/readBundle';
import { writeBundle } from '../../src/bundle/writeBundle';
import { batchRecord } from '../helpers/batchRecord';
import { claiming, zipWith } from '../helpers/zipWith';

const ID = '01ARZ3NDEKTSV4RRFFQ69G5FAV';
const KEY = 'ab'.repeat(32);
const JPEG = Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 1, 2, 3);
const batch = batchRecord(ID, 'river finds');
const journalOf = (records: readonly unknown[], version = 3) =>
  JSON.stringify({ format: 'glintgrade journal', version, records });
const JOURNAL = journalOf([batch]);
const pictures = { [`photos/${KEY}.jpg`]: JPEG, [`thumbnails/${KEY}.jpg`]: JPEG };

/** Asserts that a file is refused for a reason, and with what words. */
async function expectRefused(file: Blob, code: BundleErrorCode, words = ''): Promise<void> {
  await expect(readBundle(file)).rejects.toMatchObject({
    name: 'BundleError',
    code,
    message: expect.stringContaining(words),
  });
}

// Check value of CRC-32/ISO-HDLC: the digits 1 to 9 give CBF43926 (from memory of the catalogs of such sums).
it('sums up bytes as zips do', () => {
  expect(crc32(strToU8('123456789'))).toBe(0xcbf43926);
  expect(crc32(new Uint8Array())).toBe(0);
});

it('writes a zip that another program unpacks: journal, schema and pictures, pictures as they are', async () => {
  const photo = { key: KEY, photo: new Blob([JPEG]), thumbnail: new Blob([JPEG]) };
  const zip = await writeBundle({ records: [batch], photos: [photo] });
  const files = unzipSync(new Uint8Array(await zip.arrayBuffer()));
  expect(Object.keys(files)).toEqual(['journal.json', 'journal.schema.json', ...Object.keys(pictures)]);
  expect(JSON.parse(new TextDecoder().decode(files['journal.json']))).toEqual(JSON.parse(JOURNAL));
  expect(JSON.parse(new TextDecoder().decode(files['journal.schema.json']))).toMatchObject({
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Glintgrade journal, version 3',
  });
  expect(files[`photos/${KEY}.jpg`]).toEqual(JPEG);
});

it('reads a bundle that another program packed anew, pictures packed too and its own files added', async () => {
  const files = { 'photos/.thumbs': strToU8('x'), 'read me.txt': strToU8('mine'), ...pictures };
  const zip = zipSync({ 'journal.json': strToU8(JOURNAL), ...files }, { level: 9, comment: 'packed anew' });
  const { records, photos } = await readBundle(new Blob([zip]));
  expect(records).toEqual([batch]);
  expect(photos.map(({ key }) => key)).toEqual([KEY]);
  expect(new Uint8Array(await photos[0]!.photo.arrayBuffer())).toEqual(JPEG);
});

it('brings a bundle of the first version up to this one before it is checked', async () => {
  const stone = {
    ...{
      place: 1,
      outline: [
        [0, 0],
        [0, 9],
        [9, 0],
      ],
      lengthMm: 20,
      widthMm: 15,
      areaMm2: 240,
      inspectedCm2: 2,
    },
    ...{ flaws: [], gloss: null, smoothness: 80, action: 'repeat', reasons: ['Pits are left.'] },
  };
  const check = {
    kind: 'check',
    id: ID,
    batch: ID,
    step: 'fine',
    day: '2026-03-02',
    mmPerPx: 0.1,
    photo: null,
    stones: [stone],
  };
  const { records } = await readBundle(await zipWith({ 'journal.json': journalOf([check], 1) }));
  expect(records).toMatchObject([
    { ...check, faceOf: null, limits: { maxScratches: 1 }, stones: [{ ...stone, look: null }] },
  ]);
  const { stones: _, ...without } = check;
  await expectRefused(await zipWith({ 'journal.json': journalOf([without], 1) }), 'bad-record', 'version 1');
  await expectRefused(
    await zipWith({ 'journal.json': journalOf([7], 1) }),
    'bad-record',
    'Record 1: it is no object.',
  );
});

it.each<{ what: string; files: Parameters<typeof zipWith>[0]; code: BundleErrorCode; words: string }>([
  {
    what: 'no journal',
    files: { 'letter.txt': 'Dear stones' },
    code: 'no-journal',
    words: 'no journal.json',
  },
  {
    what: 'a journal in a folder',
    files: { 'mine/journal.json': JOURNAL },
    code: 'no-journal',
    words: 'packed anew',
  },
  { what: 'no JSON', files: { 'journal.json': '{"format":' }, code: 'broken-json', words: 'cannot be read' },
  {
    what: 'no UTF-8',
    files: { 'journal.json': Uint8Array.of(0x22, 0xff, 0x22) },
    code: 'broken-json',
    words: '',
  },
  {
    what: 'another format',
    files: { 'journal.json': '{"format":"recipes"}' },
    code: 'other-format',
    words: '',
  },
  { what: 'a list', files: { 'journal.json': '[]' }, code: 'other-format', words: '' },
  { what: 'nesting without end', files: { 'journal.json': '['.repeat(1e6) }, code: 'broken-json', words: '' },
  { what: 'version 0', files: { 'journal.json': journalOf([], 0) }, code: 'other-format', words: '' },
  { what: 'version 1.5', files: { 'journal.json': journalOf([], 1.5) }, code: 'other-format', words: '' },
  {
    what: 'a newer version',
    files: { 'journal.json': journalOf([], 4) },
    code: 'newer',
    words: 'update this one',
  },
  {
    what: 'a prototype for a journal',
    files: { 'journal.json': `{"__proto__":${JOURNAL}}` },
    code: 'other-format',
    words: '',
  },
  {
    what: 'a prototype in a record',
    files: { 'journal.json': JOURNAL.replace('"name"', '"__proto__":{"isOver":true},"name"') },
    code: 'bad-record',
    words: '“__proto__”',
  },
  {
    what: 'two records of one id',
    files: { 'journal.json': journalOf([batch, { ...batch, name: 'sea finds' }]) },
    code: 'differing-records',
    words: ID,
  },
  {
    what: 'a bad record',
    files: { 'journal.json': journalOf([{}]) },
    code: 'bad-record',
    words: 'Record 1: kind is of no kind',
  },
  {
    what: 'a name above',
    files: { 'journal.json': JOURNAL, '../a.jpg': JPEG },
    code: 'bad-name',
    words: '“../a.jpg”',
  },
  {
    what: 'a name inside that leads above',
    files: { 'journal.json': JOURNAL, 'a/../../b': JPEG },
    code: 'bad-name',
    words: '',
  },
  {
    what: 'a name from the root',
    files: { 'journal.json': JOURNAL, '/a.jpg': JPEG },
    code: 'bad-name',
    words: '',
  },
  {
    what: 'a name of a drive',
    files: { 'journal.json': JOURNAL, 'C:a.jpg': JPEG },
    code: 'bad-name',
    words: '',
  },
  {
    what: 'a name with backslashes',
    files: { 'journal.json': JOURNAL, '..\\a.jpg': JPEG },
    code: 'bad-name',
    words: '',
  },
  {
    what: 'a picture that is none',
    files: { 'journal.json': JOURNAL, ...pictures, [`photos/${KEY}.jpg`]: '<svg/>' },
    code: 'bad-photo',
    words: 'is no JPEG',
  },
  {
    what: 'a photo without thumbnail',
    files: { 'journal.json': JOURNAL, [`photos/${KEY}.jpg`]: JPEG },
    code: 'bad-photo',
    words: 'not both photo and thumbnail',
  },
])('refuses a zip with $what', async ({ files, code, words }) => {
  await expectRefused(await zipWith(files), code, words);
});

it('refuses what is no zip', async () => {
  await expectRefused(new Blob([]), 'not-a-zip');
  await expectRefused(new Blob(['Dear stones, please shine.']), 'not-a-zip', 'choose a .zip file');
});

it('refuses a name given twice', async () => {
  const zip = await zipWith({ 'journal.json': JOURNAL, 'journal.jsom': JOURNAL });
  const bytes = Buffer.from(await zip.arrayBuffer());
  bytes.write('journal.json', bytes.lastIndexOf('journal.jsom'));
  await expectRefused(new Blob([bytes]), 'bad-name', '“journal.json”');
});

it('refuses by what the directory claims, before anything is unpacked', async () => {
  const zip = await zipWith({ 'journal.json': JOURNAL, ...pictures });
  await expectRefused(await claiming(zip, 0, { bytes: 2 ** 28 + 1 }), 'too-large', '“journal.json”');
  await expectRefused(await claiming(zip, 1, { bytes: 2 ** 24 + 1 }), 'too-large', 'photos/');
  await expectRefused(await claiming(zip, 0, { bytes: 0xffffffff }), 'too-large');
  await expectRefused(await claiming(zip, 0, { flags: 1 }), 'locked', '“journal.json”');
  await expectRefused(await claiming(zip, 0, { method: 14 }), 'locked');
});

it('refuses many files that are each small enough, but not together', async () => {
  const names = Array.from({ length: 260 }, (_, i) => [`${i}.jpg`, JPEG] as const);
  let zip = await zipWith(Object.fromEntries(names));
  for (let i = 0; i < names.length; i++) zip = await claiming(zip, i, { bytes: 2 ** 24 });
  await expectRefused(zip, 'too-large');
});

it('refuses a file that unpacks to more or less than it claims, or to something else', async () => {
  const zip = await zipWith({ 'journal.json': `${JOURNAL}${' '.repeat(2 ** 20)}` });
  const short = strToU8(JOURNAL);
  for (const claims of [
    { bytes: short.length, crc: crc32(short) },
    { bytes: 2 ** 21 },
    { crc: 7 },
    { packedBytes: 9 },
    { packedBytes: 2 ** 24 },
    { headerAt: 5 },
    { headerAt: 2 ** 31 },
    { method: 0 },
  ]) {
    await expectRefused(await claiming(zip, 0, claims), 'damaged', '“journal.json”');
  }
});

it('refuses a picture of which a byte was altered', async () => {
  const zip = await zipWith({ 'journal.json': JOURNAL, ...pictures });
  const bytes = new Uint8Array(await zip.arrayBuffer());
  const at = bytes.findLastIndex((_, i) => JPEG.every((byte, k) => bytes[i + k] === byte));
  bytes[at + 5] = 99;
  await expectRefused(new Blob([bytes]), 'damaged', 'thumbnails/');
});

it('refuses a file that can no longer be read', async () => {
  const gone = new Blob(['x']);
  gone.slice = () => {
    throw new DOMException('The file is gone.', 'NotReadableError');
  };
  await expectRefused(gone, 'unreadable', 'copy it to this device');
});

it('writes nothing that it would not read', async () => {
  const photo = { key: KEY, photo: new Blob([JPEG]), thumbnail: new Blob([JPEG]) };
  const large = new Blob([JPEG, new Uint8Array(2 ** 24)]);
  const refused = [
    { records: [batchRecord('01C', 'short id')], says: 'id is not written as it must be' },
    { records: [batch, batchRecord(ID, 'other')], says: ID },
    { photos: [{ ...photo, key: 'ab' }], says: 'photos/ab.jpg is not named by 64 hexadecimal digits' },
    { photos: [{ ...photo, thumbnail: new Blob(['<svg/>']) }], says: `thumbnails/${KEY}.jpg is no JPEG` },
    { photos: [{ ...photo, photo: large }], code: 'too-large', says: `photos/${KEY}.jpg` },
  ];
  for (const { records = [], photos = [], code = 'unwritable', says } of refused) {
    const message = expect.stringContaining(says);
    await expect(writeBundle({ records, photos })).rejects.toMatchObject({ code, message });
  }
});
