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
