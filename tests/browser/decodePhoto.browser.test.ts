import { expect, it } from 'vitest';
import type { Photo } from '../../src/image/photo';
import { decodePhoto } from '../../src/worker/decodePhoto';
import avifUrl from '../golden/scene.avif?url';
import trayUrl from '../golden/tray.heic?url';
import turnedUrl from '../golden/turned.jpg?url';
import { pixelAt } from '../helpers/pixelAt';
import { TURNED_SCENE } from '../helpers/turnedScene';

async function fileAt(url: string): Promise<Blob> {
  return (await fetch(url)).blob();
}

const turned = () => fileAt(turnedUrl);

/** Expects the scene of four colors, upright. */
function expectScene(photo: Photo): void {
  expect([photo.widthPx, photo.heightPx]).toEqual([TURNED_SCENE.widthPx, TURNED_SCENE.heightPx]);
  for (const { row, column, rgb } of TURNED_SCENE.colors) {
    pixelAt(photo, row, column).forEach((level, i) => {
      expect(Math.abs(level - (rgb[i] ?? 0))).toBeLessThanOrEqual(TURNED_SCENE.tolerance);
    });
  }
}

it('turns a progressive JPEG upright as its EXIF says, with the same colors as in Node', async () => {
  expectScene(await decodePhoto(await turned()));
});

it('refuses what is empty, cut short or no photo', async () => {
  const whole = await turned();
  const half = whole.slice(0, whole.size / 2);
  await expect(decodePhoto(new Blob([]))).rejects.toMatchObject({ code: 'empty-file' });
  await expect(decodePhoto(half)).rejects.toMatchObject({ code: 'truncated' });
  await expect(decodePhoto(new Blob(['Dear stones']))).rejects.toMatchObject({ code: 'not-an-image' });
});

it('refuses a photo whose header is whole but whose pixels are not', async () => {
  const bytes = new Uint8Array(await (await turned()).arrayBuffer());
  const start = bytes.findIndex((byte, i) => byte === 0xff && bytes[i + 1] === 0xc4);
  const damaged = bytes.fill(0x11, start + 4, start + 24);
  await expect(decodePhoto(new Blob([damaged]))).rejects.toMatchObject({ code: 'not-an-image' });
});

it('decodes HEIC with our own decoder: upright, with the lens and exposure its camera wrote', async () => {
  const photo = await decodePhoto(await fileAt(trayUrl));
  expect([photo.widthPx, photo.heightPx]).toEqual([1200, 800]);
  expect([photo.focalLength35Mm, photo.exposure, photo.jpegQuality]).toEqual([52, 0.5, null]);
});

it('refuses a HEIC that is cut short or damaged, like any other photo', async () => {
  const whole = await fileAt(trayUrl);
  await expect(decodePhoto(whole.slice(0, 20_000))).rejects.toMatchObject({ code: 'truncated' });
  // Boxes up to byte 431, then pixels.
  const bytes = new Uint8Array(await whole.arrayBuffer()).fill(0xff, 431);
  await expect(decodePhoto(new Blob([bytes]))).rejects.toMatchObject({ code: 'not-an-image' });
});

it.each(['image/webp', 'image/png', 'image/jpeg'])(
  'decodes %s as the browser itself wrote it',
  async (type) => {
    const canvas = new OffscreenCanvas(240, 320);
    const context = canvas.getContext('2d');
    for (const { row, column, rgb } of TURNED_SCENE.colors) {
      if (context) context.fillStyle = `rgb(${rgb.join(' ')})`;
      context?.fillRect(column - 60, row - 80, 120, 160);
    }
    expectScene(await decodePhoto(await canvas.convertToBlob({ type, quality: 0.95 })));
  },
);

it('decodes AVIF: the scene as libvips wrote it', async () => {
  expectScene(await decodePhoto(await fileAt(avifUrl)));
});
