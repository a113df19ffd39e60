import exifr from 'exifr';
import sharp from 'sharp';
import { expect, it } from 'vitest';
import { readBundle } from '../../src/bundle/readBundle';
import { withoutMetadata } from '../../src/image/withoutMetadata';
import { batch, journalOf, KEY } from '../helpers/hostileCase';
import { placedPhoto, tracesIn } from '../helpers/placedPhoto';
import { zipWith } from '../helpers/zipWith';

const placed = new Uint8Array(await placedPhoto('sample-images/close-up.jpg', 300));
const pixelsOf = (jpeg: Uint8Array) => sharp(jpeg).rotate().raw().toBuffer();

it('leaves out place, camera and owner, and no pixel', async () => {
  expect(await tracesIn(Buffer.from(placed))).not.toEqual([]);
  const bare = await withoutMetadata(placed);
  expect(await tracesIn(Buffer.from(bare))).toEqual([]);
  expect((await pixelsOf(bare)).equals(await pixelsOf(placed))).toBe(true);
});

it.each([1, 2, 3, 4, 5, 6, 7, 8])('keeps orientation %i', async (orientation) => {
  const exif = { IFD0: { Artist: 'Invented Owner' } };
  const turned = new Uint8Array(
    await sharp('sample-images/close-up.jpg')
      .resize(120)
      .withMetadata({ orientation, exif })
      .jpeg()
      .toBuffer(),
  );
  const bare = await withoutMetadata(turned);
  expect(bare.length).toBeLessThan(turned.length);
  expect((await exifr.orientation(Buffer.from(bare))) ?? 1).toBe(orientation);
  expect((await sharp(bare).metadata()).orientation ?? 1).toBe(orientation);
  expect((await pixelsOf(bare)).equals(await pixelsOf(turned))).toBe(true);
});

it('keeps the color profile, and how colors are coded', async () => {
  const p3 = new Uint8Array(
    await sharp('sample-images/close-up.jpg')
      .resize(120)
      .withIccProfile('p3')
      .withExifMerge({ IFD0: { Artist: 'Invented Owner' } })
      .jpeg()
      .toBuffer(),
  );
  const bare = await withoutMetadata(p3);
  expect(bare.length).toBeLessThan(p3.length);
  expect((await sharp(bare).metadata()).icc).toEqual((await sharp(p3).metadata()).icc);
  const cmyk = await sharp('sample-images/close-up.jpg').resize(120).toColorspace('cmyk').jpeg().toBuffer();
  const said = Buffer.from(await withoutMetadata(new Uint8Array(cmyk)));
  expect(said.includes('Adobe')).toBe(cmyk.includes('Adobe'));
  expect((await pixelsOf(said)).equals(await pixelsOf(cmyk))).toBe(true);
});

it('leaves out what follows the picture, such as another picture', async () => {
  const [plain, longer] = await Promise.all([
    withoutMetadata(placed),
    withoutMetadata(Uint8Array.from([...placed, ...placed])),
  ]);
  expect(longer).toEqual(plain);
});

it('gives back the same bytes where nothing is to be left out, or the file makes no sense', async () => {
  const bare = await withoutMetadata(placed);
  expect(await withoutMetadata(bare)).toBe(bare);
  const broken = Uint8Array.of(0xff, 0xd8, 0xff, 0xe1, 0, 40, 1, 2, 3);
  expect((await withoutMetadata(broken)).length).toBeLessThanOrEqual(broken.length);
  const odd = Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 4, 1, 2, 7, 7, 7, 7);
  expect(await withoutMetadata(odd)).toBe(odd);
});

it('takes a bundle in without what its pictures tell of their place', async () => {
  const file = await zipWith({
    'journal.json': journalOf([batch]),
    [`photos/${KEY}.jpg`]: placed,
    [`thumbnails/${KEY}.jpg`]: placed,
  });
  const { photos } = await readBundle(file);
  expect(photos).toHaveLength(1);
  for (const picture of [photos[0]!.photo, photos[0]!.thumbnail])
    expect(await tracesIn(Buffer.from(await picture.arrayBuffer()))).toEqual([]);
});
