import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import { expect, it } from 'vitest';

const folder = new URL('../../src/public/', import.meta.url);
const manifest = JSON.parse(readFileSync(new URL('manifest.webmanifest', folder), 'utf8'));
const theme = readFileSync(new URL('../../src/styles/theme.css', import.meta.url), 'utf8');

interface Icon {
  readonly src: string;
  readonly type: string;
  readonly sizes: string;
  readonly purpose?: string;
}

it('has the colors of the light theme', () => {
  const ground = /--ground: (#[0-9a-f]{6});/.exec(theme)?.[1];
  expect([manifest.background_color, manifest.theme_color]).toEqual([ground, ground]);
});

it.each(manifest.icons as Icon[])('names an icon that is there, of the size it says: $src', async (icon) => {
  const { format, width, height } = await sharp(readFileSync(new URL(icon.src, folder))).metadata();
  expect(icon.type).toBe(format === 'svg' ? 'image/svg+xml' : `image/${format}`);
  expect(icon.sizes).toBe(format === 'svg' ? 'any' : `${width}x${height}`);
});

it('keeps the stone of a maskable icon inside the circle that a device may cut out', async () => {
  // W3C Web App Manifest, section on purpose "maskable": a circle of 40 % of the width around the middle is safe.
  const { data, info } = await sharp(readFileSync(new URL('icons/full-512.png', folder)))
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const ground = [...data.subarray(0, 3)];
  let farthest = 0;
  for (let at = 0; at < data.length; at += 3) {
    if (ground.every((code, i) => Math.abs(code - (data[at + i] ?? 0)) < 8)) continue;
    const place = at / 3;
    const [row, column] = [Math.floor(place / info.width), place % info.width];
    farthest = Math.max(farthest, Math.hypot(row - 255.5, column - 255.5));
  }
  expect(farthest).toBeGreaterThan(100);
  expect(farthest).toBeLessThanOrEqual(0.4 * 512);
});

it('takes shared photos of every format that is measured', () => {
  const [field] = manifest.share_target.params.files;
  expect(field.name).toBe('photos');
  expect(field.accept).toEqual(
    expect.arrayContaining(['image/*', '.heic', '.jpg', '.png', '.webp', '.avif']),
  );
});
