import { expect, it } from 'vitest';
import { decodePhoto } from '../../src/worker/decodePhoto';
import turnedUrl from '../golden/turned.jpg?url';
import { pixelAt } from '../helpers/pixelAt';
import { TURNED_SCENE } from '../helpers/turnedScene';

async function turned(): Promise<Blob> {
  return (await fetch(turnedUrl)).blob();
}

it('turns a progressive JPEG upright as its EXIF says, with the same colors as in Node', async () => {
  const photo = await decodePhoto(await turned());
  expect([photo.widthPx, photo.heightPx]).toEqual([TURNED_SCENE.widthPx, TURNED_SCENE.heightPx]);
  for (const { row, column, rgb } of TURNED_SCENE.colors) {
    pixelAt(photo, row, column).forEach((level, i) => {
      expect(Math.abs(level - (rgb[i] ?? 0))).toBeLessThanOrEqual(TURNED_SCENE.tolerance);
    });
  }
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
