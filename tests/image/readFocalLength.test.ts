import sharp from 'sharp';
import { expect, it } from 'vitest';
import { readFocalLength } from '../../src/image/readFocalLength';

/** A small JPEG written by libvips with that Exif entry. */
async function jpegWith(exif: Record<string, string>): Promise<Uint8Array> {
  const plain = sharp({ create: { width: 8, height: 8, channels: 3, background: 'gray' } });
  return new Uint8Array(await plain.withExif({ IFD2: exif }).jpeg().toBuffer());
}

it('reads the equivalent focal length that a camera wrote', async () => {
  expect(await readFocalLength(await jpegWith({ FocalLengthIn35mmFilm: '26' }))).toBe(26);
});

it('has none for a photo without Exif data', async () => {
  const plain = await sharp({ create: { width: 8, height: 8, channels: 3, background: 'gray' } })
    .jpeg()
    .toBuffer();
  expect(await readFocalLength(new Uint8Array(plain))).toBeNull();
});

it('takes an impossible length for none', async () => {
  expect(await readFocalLength(await jpegWith({ FocalLengthIn35mmFilm: '0' }))).toBeNull();
});

it('has none for bytes that are no picture', async () => {
  expect(await readFocalLength(new Uint8Array([1, 2, 3]))).toBeNull();
});

it.each(['png', 'webp', 'avif'] as const)('reads it in a copy of the photo as %s, too', async (format) => {
  const copy = sharp(await jpegWith({ FocalLengthIn35mmFilm: '26' })).keepExif();
  expect(await readFocalLength(new Uint8Array(await copy.toFormat(format).toBuffer()))).toBe(26);
});
