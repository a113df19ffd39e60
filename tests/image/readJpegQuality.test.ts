import { readFile } from 'node:fs/promises';
import sharp from 'sharp';
import { expect, it } from 'vitest';
import { readJpegQuality } from '../../src/image/readJpegQuality';

/** ITU-T T.81, table K.1. */
const LUMINANCE = [
  16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56, 14, 17, 22,
  29, 51, 87, 80, 62, 18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113, 92, 49, 64, 78, 87, 103,
  121, 120, 101, 72, 92, 95, 98, 112, 100, 103, 99,
];

/** A file of one quantization table. */
const fileOf = (table: readonly number[]) =>
  Uint8Array.from([0xff, 0xd8, 0xff, 0xdb, 0, 67, 0, ...table, 0xff, 0xda, 0, 2]);

it('calls the example of the standard 50', () => {
  expect(readJpegQuality(fileOf(LUMINANCE))).toBeCloseTo(50, 9);
});

it('calls twice as coarse a table 25, and one half as coarse 75', () => {
  expect(readJpegQuality(fileOf(LUMINANCE.map((step) => Math.min(255, 2 * step))))).toBeCloseTo(25, 9);
  expect(readJpegQuality(fileOf(LUMINANCE.map((step) => step / 2)))).toBeGreaterThan(74);
});

it.each([60, 70, 80, 90])('reads the quality %s that libvips saved with', async (quality) => {
  const bytes = await sharp({ create: { width: 32, height: 32, channels: 3, background: 'teal' } })
    .jpeg({ quality })
    .toBuffer();
  expect(Math.abs(readJpegQuality(new Uint8Array(bytes))! - quality)).toBeLessThan(1.5);
});

it('reads 92 of the sample photos, as they were saved', async () => {
  const bytes = await readFile(new URL('../../sample-images/mid-tray.jpg', import.meta.url));
  expect(Math.abs(readJpegQuality(new Uint8Array(bytes))! - 92)).toBeLessThan(1.5);
});

it('says nothing of other files and of files cut short', async () => {
  const png = await sharp({ create: { width: 8, height: 8, channels: 3, background: 'teal' } })
    .png()
    .toBuffer();
  expect(readJpegQuality(new Uint8Array(png))).toBeNull();
  expect(readJpegQuality(fileOf(LUMINANCE).slice(0, 40))).toBeNull();
  expect(readJpegQuality(new Uint8Array())).toBeNull();
});
