import { expect, it } from 'vitest';
import { openPictures } from '../../src/worker/openPictures';
import trayUrl from '../golden/tray.heic?url';
import turnedUrl from '../golden/turned.jpg?url';

const fileAt = async (url: string) => (await fetch(url)).blob();

it('makes a JPEG of a HEIC that the browser cannot show, upright and at full size, once', async () => {
  const pictureOf = openPictures();
  const tray = await fileAt(trayUrl);
  const [picture, again] = await Promise.all([pictureOf(tray), pictureOf(tray)]);
  expect(picture.type).toBe('image/jpeg');
  expect(again).toBe(picture);
  const bitmap = await createImageBitmap(picture);
  expect([bitmap.width, bitmap.height]).toEqual([1200, 800]);
});

it('leaves every other photo as it is and starts no worker for it', async () => {
  const pictureOf = openPictures(() => {
    throw new Error('No worker is needed.');
  });
  const turned = await fileAt(turnedUrl);
  expect(await pictureOf(turned)).toBe(turned);
  const text = new Blob(['Dear stones']);
  expect(await pictureOf(text)).toBe(text);
});

it('gives a HEIC that cannot be decoded back as it is', async () => {
  const cut = (await fileAt(trayUrl)).slice(0, 2000);
  expect(await openPictures()(cut)).toBe(cut);
});

it('makes an upright JPEG of a WebP that its EXIF data turn, which the browser shows as it is stored', async () => {
  const canvas = new OffscreenCanvas(300, 240);
  canvas.getContext('2d')?.fillRect(0, 0, 300, 120);
  const plain = await canvas.convertToBlob({ type: 'image/webp', quality: 1 });
  expect(await openPictures()(plain)).toBe(plain);
  const picture = await openPictures()(await turnedWebp(plain, 6));
  expect(picture.type).toBe('image/jpeg');
  const bitmap = await createImageBitmap(picture);
  expect([bitmap.width, bitmap.height]).toEqual([240, 300]);
});

/** A lossy WebP of Chromium's, as an extended one whose EXIF data say how to turn it (RFC 9649, section 2.7). */
async function turnedWebp(plain: Blob, orientation: number): Promise<Blob> {
  const bitmap = await createImageBitmap(plain);
  const inside = new Uint8Array(await plain.slice(12).arrayBuffer());
  const from = String.fromCharCode(...inside.subarray(0, 4)) === 'VP8X' ? 18 : 0;
  const uint24 = (value: number) => [value & 255, (value >> 8) & 255, value >> 16];
  const head = [0x56, 0x50, 0x38, 0x58, 10, 0, 0, 0, 8, 0, 0, 0];
  const extended = [...head, ...uint24(bitmap.width - 1), ...uint24(bitmap.height - 1)];
  const tiff = [
    0x4d,
    0x4d,
    0,
    42,
    0,
    0,
    0,
    8,
    0,
    1,
    1,
    0x12,
    0,
    3,
    0,
    0,
    0,
    1,
    0,
    orientation,
    0,
    0,
    0,
    0,
    0,
    0,
  ];
  const exif = [0x45, 0x58, 0x49, 0x46, tiff.length, 0, 0, 0, ...tiff];
  const body = new Uint8Array([0x57, 0x45, 0x42, 0x50, ...extended, ...inside.subarray(from), ...exif]);
  const size = new Uint8Array(new Uint32Array([body.length]).buffer);
  return new Blob([new Uint8Array([0x52, 0x49, 0x46, 0x46]), size, body], { type: 'image/webp' });
}
