import { type HostileCase, hostile, JPEG, journalFile, KEY } from './hostileCase';
import { joined, littleEndian, type RawFile, rawZip } from './rawZip';

/** A good bundle: a journal, deflated, and a picture in both sizes. */
const GOOD: readonly RawFile[] = [
  { ...journalFile(), isDeflated: true },
  { name: `photos/${KEY}.jpg`, content: JPEG },
  { name: `thumbnails/${KEY}.jpg`, content: JPEG },
];
const good = () => rawZip(GOOD);
const journalWith = (parts: Partial<RawFile>) => () => rawZip([{ ...GOOD[0]!, ...parts }, ...GOOD.slice(1)]);
const alteredEnd = (end: Parameters<typeof rawZip>[1]) => () => rawZip(GOOD, end);

/** Zips whose parts contradict each other, are cut short, or are no zips. */
export const CONTAINERS: readonly HostileCase[] = [
  hostile('an empty file', 'not-a-zip', () => new Blob([])),
  hostile('an empty zip', 'no-journal', () => rawZip([])),
  hostile(
    'a JPEG, a PDF and a page called .zip',
    'not-a-zip',
    () => new Blob([JPEG, new Uint8Array(999)]),
    () => new Blob(['%PDF-1.7 ']),
    () => new Blob(['<html></html>']),
  ),
  hostile(
    'the signature of an end and nothing else',
    'not-a-zip',
    () => new Blob([littleEndian([0x06054b50, 4])]),
  ),
  hostile('a bundle cut at any place', 'not-a-zip', () => {
    const whole = good();
    return Array.from({ length: 60 }, (_, i) => whole.slice(0, Math.floor((whole.size * i) / 60)));
  }),
  hostile('a bundle cut short by its last byte', 'not-a-zip', () => good().slice(0, -1)),
  hostile(
    'a bundle whose beginning is lost',
    'damaged',
    () => good().slice(1),
    () => good().slice(40),
  ),
  hostile(
    'a bundle with something before it that its places leave out',
    'damaged',
    () => new Blob(['#!/bin/sh\n', good()]),
  ),
  hostile('a picture in front of a bundle, its places put right', null, alteredEnd({ before: JPEG })),
  hostile(
    'a script behind a bundle, as its comment',
    null,
    alteredEnd({ comment: '<script>alert(1)</script>' }),
  ),
  hostile('the signature of an end in the comment', null, alteredEnd({ comment: 'PK\x05\x06' })),
  hostile(
    'another end in the comment',
    'no-journal',
    alteredEnd({ comment: joined([littleEndian([0x06054b50, 4]), new Uint8Array(18)]) }),
  ),
  hostile(
    'the 64-bit extension',
    'too-large',
    alteredEnd({ count: 0xffff }),
    alteredEnd({ directoryAt: 0xffffffff }),
    journalWith({ central: { bytes: 0xffffffff } }),
    journalWith({ central: { packedBytes: 0xffffffff } }),
  ),
  hostile(
    'a list that lies beyond the file',
    'damaged',
    alteredEnd({ directoryAt: 2 ** 31 }),
    alteredEnd({ directoryBytes: 2 ** 31 }),
  ),
  hostile(
    'a list that lies elsewhere',
    'damaged',
    alteredEnd({ directoryAt: 7 }),
    alteredEnd({ directoryBytes: 60 }),
  ),
  hostile(
    'a list of more files than there are',
    'damaged',
    alteredEnd({ count: 4 }),
    alteredEnd({ count: 65_000 }),
  ),
  hostile('a list of fewer files than there are', 'bad-photo', alteredEnd({ count: 2 })),
  hostile(
    'the flag of a password in the list',
    'locked',
    journalWith({ central: { flags: 1 } }),
    journalWith({ central: { flags: 0x41 } }),
  ),
  hostile('the flag of a password in the file’s own header', 'locked', journalWith({ local: { flags: 1 } })),
  hostile(
    'the flags of patched and of hidden data',
    'locked',
    journalWith({ central: { flags: 0x20 } }),
    journalWith({ central: { flags: 0x2000 } }),
  ),
  hostile(
    'other ways to pack',
    'locked',
    ...[1, 9, 12, 14, 93, 95, 99].map((method) => journalWith({ central: { method } })),
  ),
  hostile('another way to pack in the file’s own header', 'damaged', journalWith({ local: { method: 0 } })),
  hostile(
    'another name in the file’s own header',
    'damaged',
    journalWith({ local: { name: 'journal.jsom' } }),
    journalWith({ local: { name: '../../../x' } }),
  ),
  hostile(
    'sizes in the file’s own header that are not so',
    null,
    journalWith({ local: { bytes: 0xffffffff, packedBytes: 0 } }),
    journalWith({ local: { bytes: 2 ** 30, packedBytes: 2 ** 30, crc: 7 } }),
  ),
  hostile(
    'sizes in a data descriptor that are not so',
    null,
    journalWith({
      local: { flags: 8, bytes: 0, packedBytes: 0, crc: 0 },
      central: { flags: 8 },
      after: littleEndian([0x08074b50, 4], [7, 4], [2 ** 31, 4], [2 ** 31, 4]),
    }),
  ),
  hostile('a size in the list that is too large', 'damaged', journalWith({ central: { bytes: 2 ** 20 } })),
  hostile(
    'a size in the list that is too small',
    'damaged',
    journalWith({ central: { bytes: 5 } }),
    journalWith({ central: { bytes: 0 } }),
  ),
  hostile(
    'a packed size in the list that is not so',
    'damaged',
    journalWith({ central: { packedBytes: 9 } }),
    journalWith({ central: { packedBytes: 2 ** 30 } }),
    journalWith({ central: { packedBytes: 0 } }),
  ),
  hostile(
    'a place in the list that is not so',
    'damaged',
    journalWith({ central: { headerAt: 5 } }),
    journalWith({ central: { headerAt: 2 ** 31 } }),
  ),
  hostile('a wrong checksum in the list', 'damaged', journalWith({ central: { crc: 7 } })),
  hostile(
    'packed content that is garbage',
    'damaged',
    journalWith({ packed: new Uint8Array(99).fill(0x5a) }),
    journalWith({ packed: Uint8Array.of(7) }),
    journalWith({ packed: new Uint8Array(0) }),
  ),
  hostile(
    'packed content that goes back before its beginning',
    'damaged',
    journalWith({ packed: Uint8Array.of(0x4b, 0x04, 0xff, 0x0f, 0x00) }),
  ),
];
