import { expect, it } from 'vitest';
import { SMALL_PX, smallPhoto } from '../../src/ui/photo/smallPhoto';
import turnedUrl from '../golden/turned.jpg?url';

const fileAt = async (url: string) => (await fetch(url)).blob();
const bitmapOf = async (photo: Blob) => {
  const bitmap = await createImageBitmap(photo);
  return [bitmap.width, bitmap.height];
};

/** Dark above, light below. */
async function largePhoto(width: number, height: number): Promise<Blob> {
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d')!;
  context.fillStyle = '#202020';
  context.fillRect(0, 0, width, height);
  context.fillStyle = '#606060';
  context.fillRect(0, height / 2, width, height / 2);
  return canvas.convertToBlob({ type: 'image/jpeg', quality: 0.9 });
}

it('brings a large photo to the screen’s size, tells its own, and how far it is brightened', async () => {
  const photo = await largePhoto(3000, 2000);
  const small = await smallPhoto(photo);
  expect(small).toMatchObject({ widthPx: 3000, heightPx: 2000 });
  expect(await bitmapOf(small.picture)).toEqual([SMALL_PX, (SMALL_PX * 2) / 3]);
  // Middle brightness 0x40 / 255, half of what is wished for.
  expect(small.lift).toBeCloseTo(0.5 / (0x40 / 255), 1);
});

it('leaves a photo that is small enough as it is', async () => {
  const photo = await largePhoto(900, 600);
  expect((await smallPhoto(photo)).picture).toBe(photo);
});

it('tells the size upright of a photo turned by its EXIF', async () => {
  const turned = await fileAt(turnedUrl);
  const small = await smallPhoto(turned);
  expect([small.widthPx, small.heightPx]).toEqual(await bitmapOf(turned));
});

it('refuses what the browser cannot show', async () => {
  await expect(smallPhoto(new Blob(['Dear stones'], { type: 'image/jpeg' }))).rejects.toThrow('cannot show');
});
