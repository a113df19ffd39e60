import { expect, it } from 'vitest';
import { photoFormat } from '../../src/image/photoFormat';
import { photoFile } from '../helpers/photoFile';

it.each(['jpeg', 'png', 'webp', 'avif'] as const)('tells a %s by its first bytes', async (format) => {
  expect(photoFormat(await photoFile(format))).toBe(format);
});

/** The first box of a file: its brands, the major one first, then four bytes that mean nothing here. */
function filesFirstBox(major: string, ...others: string[]): Uint8Array {
  const text = `ftyp${major}\0\0\0\0${others.join('')}`;
  return Buffer.concat([Buffer.from([0, 0, 0, text.length + 4]), Buffer.from(text)]);
}

it('tells HEIC and AVIF by any of their brands, in whatever order', () => {
  expect(photoFormat(filesFirstBox('heic', 'mif1', 'heic'))).toBe('heic');
  expect(photoFormat(filesFirstBox('mif1', 'miaf', 'MiHB', 'heix'))).toBe('heic');
  expect(photoFormat(filesFirstBox('mif1', 'miaf', 'avif'))).toBe('avif');
});

it('takes a film and an unknown coding for neither, and reads no brand beyond the box', () => {
  expect(photoFormat(filesFirstBox('isom', 'iso2', 'mp41'))).toBeNull();
  expect(photoFormat(filesFirstBox('mif1', 'miaf'))).toBeNull();
  const behind = Buffer.concat([filesFirstBox('isom'), Buffer.from('heic')]);
  expect(photoFormat(behind)).toBeNull();
});

it('knows no other', async () => {
  expect(photoFormat(await photoFile('gif'))).toBeNull();
  expect(photoFormat(new Uint8Array([0xff]))).toBeNull();
});
