import { decodePhoto } from './decodePhoto';

/** The module worker behind `openPictures`: turns a photo into a JPEG that every browser shows. */

const QUALITY = 0.92;

addEventListener('message', async ({ data: photo }: MessageEvent<Blob>) => {
  self.postMessage(await pictureOf(photo).catch(() => null));
});

async function pictureOf(file: Blob): Promise<Blob> {
  const { widthPx, heightPx, rgba } = await decodePhoto(file);
  const canvas = new OffscreenCanvas(widthPx, heightPx);
  const context = canvas.getContext('2d');
  if (!context) throw new Error('This browser draws no pictures off the screen.');
  context.putImageData(new ImageData(rgba as Uint8ClampedArray<ArrayBuffer>, widthPx, heightPx), 0, 0);
  return canvas.convertToBlob({ type: 'image/jpeg', quality: QUALITY });
}
