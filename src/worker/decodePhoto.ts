import { checkPhotoFile } from '../image/checkPhotoFile';
import { checkSize } from '../image/checkSize';
import { Refusal } from '../image/notice';
import type { Photo } from '../image/photo';
import { photoFormat } from '../image/photoFormat';
import { readExposure } from '../image/readExposure';
import { readFocalLength } from '../image/readFocalLength';
import { readJpegQuality } from '../image/readJpegQuality';

/**
 * Decodes a photo, upright and in sRGB: with the browser's own decoder, or with ours where that cannot read HEIC.
 *
 * @throws Refusal if the file is not a whole photo of a usable size.
 */
export async function decodePhoto(file: Blob): Promise<Photo> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  checkPhotoFile(bytes);
  const bitmap = await createImageBitmap(file).catch(() => null);
  const pixels = bitmap ? pixelsOf(bitmap) : await decodeOurselves(bytes);
  const [focalLength35Mm, exposure] = await Promise.all([readFocalLength(bytes), readExposure(bytes)]);
  return { ...pixels, focalLength35Mm, exposure, jpegQuality: readJpegQuality(bytes) };
}

/** The decoder is loaded with the first HEIC file that needs it. */
async function decodeOurselves(bytes: Uint8Array): Promise<Photo> {
  if (photoFormat(bytes) !== 'heic') throw new Refusal('not-an-image');
  const { decodeHeic } = await import('../vision/decodeHeic');
  return decodeHeic(bytes);
}

function pixelsOf(bitmap: ImageBitmap): Photo {
  try {
    const { width, height } = bitmap;
    checkSize(width, height);
    const canvas = new OffscreenCanvas(width, height);
    const context = canvas.getContext('2d', { willReadFrequently: true, colorSpace: 'srgb' });
    if (!context) throw new Error('The browser gives no canvas to decode the photo on.');
    context.drawImage(bitmap, 0, 0);
    return { widthPx: width, heightPx: height, rgba: context.getImageData(0, 0, width, height).data };
  } finally {
    bitmap.close();
  }
}
