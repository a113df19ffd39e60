import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { checkPhotoFile } from '../../src/image/checkPhotoFile';
import { photoFile } from '../helpers/photoFile';

const FORMATS = [
  { name: 'JPEG', file: await photoFile('jpeg') },
  { name: 'progressive JPEG', file: await photoFile('jpeg', { settings: { progressive: true } }) },
  { name: 'PNG', file: await photoFile('png') },
  { name: 'lossy WebP', file: await photoFile('webp') },
  { name: 'lossless WebP', file: await photoFile('webp', { settings: { lossless: true } }) },
  { name: 'AVIF', file: await photoFile('avif', { settings: { effort: 0 } }) },
  { name: 'HEIC', file: readFileSync(new URL('../golden/wide.heic', import.meta.url)) },
];

function refusalOf(bytes: Uint8Array): string {
  try {
    checkPhotoFile(bytes);
    return 'accepted';
  } catch (error) {
    return (error as { code: string }).code;
  }
}

it.each(FORMATS)('accepts a whole $name', ({ file }) => {
  expect(refusalOf(file)).toBe('accepted');
});

it.each(FORMATS)('notices that a $name is cut short', ({ file }) => {
  expect(refusalOf(file.subarray(0, file.length / 2))).toBe('truncated');
  expect(refusalOf(file.subarray(0, file.length - 20))).toBe('truncated');
});

it.each(['jpeg', 'png', 'webp', 'avif'] as const)('refuses a %s of one pixel', async (format) => {
  expect(refusalOf(await photoFile(format, { width: 1, height: 1 }))).toBe('too-small');
});

it('accepts 200 pixels on the shorter side and no fewer', async () => {
  expect(refusalOf(await photoFile('png', { width: 300, height: 200 }))).toBe('accepted');
  expect(refusalOf(await photoFile('png', { width: 300, height: 199 }))).toBe('too-small');
});

it('refuses an enormous picture by its header, without decoding it', () => {
  const [width, height] = [30_000, 30_000];
  const header = Buffer.from('89504e470d0a1a0a0000000d49484452', 'hex');
  const size = Buffer.alloc(17);
  size.writeUInt32BE(width, 0);
  size.writeUInt32BE(height, 4);
  const end = Buffer.from('0000000049454e44ae426082', 'hex');
  expect(refusalOf(Buffer.concat([header, size, end]))).toBe('too-large');
});

it('judges the size of a HEIC by the largest picture in it, before decoding it', () => {
  const small = readFileSync(new URL('../golden/wide.heic', import.meta.url));
  const stated = small.indexOf('ispe') + 8;
  small.writeUInt32BE(100, stated);
  expect(refusalOf(small)).toBe('too-small');
  small.writeUInt32BE(30_000, stated);
  small.writeUInt32BE(30_000, stated + 4);
  expect(refusalOf(small)).toBe('too-large');
});

it('accepts a JPEG with more behind its end, such as a clip', async () => {
  expect(refusalOf(Buffer.concat([await photoFile('jpeg'), Buffer.alloc(5000)]))).toBe('accepted');
});

it('refuses nothing at all, text, and pictures of other formats', async () => {
  expect(refusalOf(new Uint8Array())).toBe('empty-file');
  expect(refusalOf(Buffer.from('Dear stones, please shine.'))).toBe('not-an-image');
  expect(refusalOf(await photoFile('gif'))).toBe('not-an-image');
  expect(refusalOf(await photoFile('tiff'))).toBe('not-an-image');
});

it('refuses a signature with nothing sensible behind it', () => {
  expect(refusalOf(Buffer.from('ffd8ffe000041234000000000000', 'hex'))).toBe('not-an-image');
  expect(refusalOf(Buffer.from('ffd8ff', 'hex'))).toBe('truncated');
});
