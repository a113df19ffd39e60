import { type HostileCase, hostile, JPEG, journalFile, KEY, withFiles } from './hostileCase';
import { bytesOf, type Content, joined, rawZip } from './rawZip';

const pair = (photo: Content, thumbnail: Content = JPEG, key = KEY) =>
  withFiles(
    { name: `photos/${key}.jpg`, content: photo },
    { name: `thumbnails/${key}.jpg`, content: thumbnail },
  );
const PNG = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);
const JPEG_START = Uint8Array.of(0xff, 0xd8, 0xff);
const SOI = Uint8Array.of(0xff, 0xd8);

/** Header of a frame of a size; ITU-T T.81, B.2.2. */
function frame(widthPx: number, heightPx: number): Uint8Array<ArrayBuffer> {
  const size = [heightPx >> 8, heightPx & 255, widthPx >> 8, widthPx & 255];
  return Uint8Array.from([0xff, 0xc0, 0, 11, 8, ...size, 1, 1, 0x11, 0]);
}
const framed = (widthPx: number, heightPx: number) => joined([SOI, frame(widthPx, heightPx)]);
/** With bytes that decoders pass over on their way to the next marker. */
const strewn = joined([SOI, Uint8Array.of(0xff, 0xe0, 0, 2, 1, 2, 3, 4), frame(65_500, 65_500)]);

/** Pictures that are none, that are something else as well, or that would fill memory once they are drawn. */
export const PICTURES: readonly HostileCase[] = [
  hostile('a PNG for a photo', 'bad-photo', () => pair(PNG)),
  hostile('a drawing with a script for a photo', 'bad-photo', () =>
    pair('<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"/>'),
  ),
  hostile('a page for a thumbnail', 'bad-photo', () => pair(JPEG, '<script>alert(1)</script>')),
  hostile(
    'an empty photo, and one of two bytes',
    'bad-photo',
    () => pair(''),
    () => pair(SOI),
  ),
  hostile('a page behind the beginning of a JPEG', null, () =>
    pair(joined([JPEG_START, bytesOf('<html><script>alert(1)</script></html>')])),
  ),
  hostile('a zip behind the beginning of a JPEG', null, () =>
    pair(joined([JPEG, Uint8Array.of(0x50, 0x4b, 5, 6, ...new Uint8Array(18))])),
  ),
  hostile('a photo without a thumbnail', 'bad-photo', () =>
    withFiles({ name: `photos/${KEY}.jpg`, content: JPEG }),
  ),
  hostile('a thumbnail without a photo', 'bad-photo', () =>
    withFiles({ name: `thumbnails/${KEY}.jpg`, content: JPEG }),
  ),
  hostile(
    'keys that are too short, too long, in capitals, or no key',
    null,
    ...[KEY.slice(1), `${KEY}0`, KEY.toUpperCase(), '__proto__', `${KEY}.jpg`, `${KEY}\u200b`].map(
      (key) => () => pair('<svg/>', '<svg/>', key),
    ),
  ),
  hostile('a photo larger than may be', 'too-large', () => pair(joined([JPEG, new Uint8Array(2 ** 24)]))),
  hostile(
    'a photo said to have four thousand million pixels',
    'too-large',
    () => pair(framed(65_500, 65_500)),
    () => pair(strewn),
  ),
  hostile('a thumbnail as large as a photo', 'too-large', () => pair(framed(2000, 1500), framed(2000, 1500))),
  hostile('a photo and a thumbnail of their sizes', null, () => pair(framed(2000, 1500), framed(320, 240))),
  hostile('a bundle that is a JPEG as well', null, () =>
    rawZip([journalFile()], { before: joined([framed(8, 8), JPEG]) }),
  ),
];
