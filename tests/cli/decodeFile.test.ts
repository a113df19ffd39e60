import sharp from 'sharp';
import { expect, it } from 'vitest';
import { decodeFile } from '../../src/cli/decodeFile';
import { photoFile } from '../helpers/photoFile';
import { pixelAt } from '../helpers/pixelAt';
import { temporaryFolder } from '../helpers/temporaryFolder';
import { TURNED_SCENE } from '../helpers/turnedScene';

const { save } = await temporaryFolder();

it('turns a progressive JPEG upright as its EXIF says', async () => {
  const photo = await decodeFile('tests/golden/turned.jpg');
  expect([photo.widthPx, photo.heightPx]).toEqual([TURNED_SCENE.widthPx, TURNED_SCENE.heightPx]);
  for (const { row, column, rgb } of TURNED_SCENE.colors) {
    pixelAt(photo, row, column).forEach((level, i) => {
      expect(Math.abs(level - (rgb[i] ?? 0))).toBeLessThanOrEqual(TURNED_SCENE.tolerance);
    });
  }
});

it.each(['jpeg', 'png', 'webp', 'avif'] as const)('decodes a %s to four 8-bit channels', async (format) => {
  const photo = await decodeFile(await save(`photo.${format}`, await photoFile(format)));
  expect(photo.rgba).toHaveLength(4 * 320 * 240);
  expect(photo.rgba[3]).toBe(255);
});

it('decodes gray and 16-bit pictures to the same four channels', async () => {
  const gray = await sharp(await photoFile('png'))
    .toColorspace('b-w')
    .png()
    .toBuffer();
  const deep = await sharp(await photoFile('png'))
    .toColorspace('rgb16')
    .png()
    .toBuffer();
  for (const bytes of [gray, deep]) {
    const photo = await decodeFile(await save('odd.png', bytes));
    expect(photo.rgba).toHaveLength(4 * 320 * 240);
    expect(photo.rgba.reduce((sum, level) => sum + level, 0) / photo.rgba.length).toBeGreaterThan(120);
  }
});

it('converts a wide-gamut photo to sRGB', async () => {
  const create = { width: 240, height: 240, channels: 3, background: { r: 100, g: 180, b: 90 } } as const;
  const wide = await sharp({ create }).withIccProfile('p3').png().toBuffer();
  const [r = 0, g = 0, b = 0] = pixelAt(await decodeFile(await save('wide.png', wide)), 9, 9);
  expect(Math.abs(r - 100) + Math.abs(g - 180) + Math.abs(b - 90)).toBeLessThanOrEqual(3);
});

it('refuses a file whose pixels are damaged', async () => {
  const png = await photoFile('png');
  png.fill(0x55, 200, png.length - 200);
  await expect(decodeFile(await save('damaged.png', png))).rejects.toMatchObject({ name: 'Refusal' });
});
