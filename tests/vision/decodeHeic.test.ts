import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import { expect, it } from 'vitest';
import { decodeHeic } from '../../src/vision/decodeHeic';
import { uprightTray, WIDE_COLORS } from '../golden/heic';
import { pixelAt } from '../helpers/pixelAt';

const golden = (name: string) => readFileSync(new URL(`../golden/${name}`, import.meta.url));

it('gives the pixels that were encoded, turned upright once, within what quality 45 costs', async () => {
  const photo = await decodeHeic(golden('tray.heic'));
  expect([photo.widthPx, photo.heightPx]).toEqual([1200, 800]);
  const source = await sharp(await uprightTray())
    .ensureAlpha()
    .raw()
    .toBuffer();
  const errors = source.map((code, i) => Math.abs(code - (photo.rgba[i] ?? 0)));
  // Levels of 255: half of all within 1, 99 of 100 within 8, none off by more than 48; 1, 7 and 37 when written.
  const sorted = errors.sort();
  expect(sorted[Math.floor(0.5 * sorted.length)]).toBeLessThanOrEqual(1);
  expect(sorted[Math.floor(0.99 * sorted.length)]).toBeLessThanOrEqual(8);
  expect(sorted.at(-1)).toBeLessThanOrEqual(48);
});

it('turns Display P3 into sRGB as lcms2 turned sRGB into Display P3', async () => {
  const photo = await decodeHeic(golden('wide.heic'));
  expect([photo.widthPx, photo.heightPx]).toEqual([320, 256]);
  WIDE_COLORS.forEach((color, band) => {
    pixelAt(photo, 32 + 64 * band, 160).forEach((code, channel) => {
      expect(Math.abs(code - (color[channel] ?? 0))).toBeLessThanOrEqual(2);
    });
  });
});

it('refuses what it cannot decode and goes on with the next file', async () => {
  const damaged = golden('tray.heic');
  damaged.fill(0xff, damaged.indexOf('mdat') + 4);
  await expect(decodeHeic(damaged)).rejects.toMatchObject({ code: 'not-an-image' });
  await expect(decodeHeic(new Uint8Array([1, 2, 3]))).rejects.toMatchObject({ code: 'not-an-image' });
  expect((await decodeHeic(golden('wide.heic'))).widthPx).toBe(320);
});
