import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import { expect, it } from 'vitest';
import { readExposure } from '../../src/image/readExposure';
import { readFocalLength } from '../../src/image/readFocalLength';
import { readHeifExif } from '../../src/image/readHeifExif';
import { readMomentTaken } from '../../src/image/readMomentTaken';

const heic = () => readFileSync(new URL('../golden/tray.heic', import.meta.url));

it('finds what a camera wrote into a HEIC: the entries of tests/golden/heic', async () => {
  expect(await readFocalLength(heic())).toBe(52);
  // 1/50 s, f/2, ISO 100.
  expect(await readExposure(heic())).toBeCloseTo(0.5, 9);
});

it('finds it in an AVIF that libvips wrote', async () => {
  const plain = sharp({ create: { width: 16, height: 16, channels: 3, background: 'gray' } });
  const exif = { IFD2: { DateTimeOriginal: '2026:03:04 05:06:07', FocalLengthIn35mmFilm: '26' } };
  const avif = await plain.withExif(exif).avif({ effort: 0 }).toBuffer();
  expect(await readMomentTaken(avif)).toBe('2026-03-04T05:06:07');
  expect(await readFocalLength(avif)).toBe(26);
});

it('gives none for a file without Exif data', async () => {
  const wide = readFileSync(new URL('../golden/wide.heic', import.meta.url));
  expect(readHeifExif(wide)).toBeNull();
  expect(await readFocalLength(wide)).toBeNull();
  expect(readHeifExif(new Uint8Array([0, 0, 0]))).toBeNull();
});

it('gives none when the data lie beyond the end of the file', async () => {
  const file = heic();
  expect(readHeifExif(file.subarray(0, 600))).toBeNull();
  expect(await readExposure(file.subarray(0, 600))).toBeNull();
});

it('survives a table that is damaged anywhere', () => {
  const whole = heic();
  const [from, to] = [whole.indexOf('meta'), whole.indexOf('mdat')];
  for (let at = from; at < to; at++) {
    const damaged = Buffer.from(whole);
    damaged[at] = 0xff;
    const found = readHeifExif(damaged);
    if (found) expect(found.length).toBeLessThan(whole.length);
  }
});
