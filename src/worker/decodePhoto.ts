import { checkPhotoFile } from '../image/checkPhotoFile';
import { checkSize } from '../image/checkSize';
import { Refusal } from '../image/notice';
import type { Photo } from '../image/photo';
import { photoFormat } from '../image/photoFormat';
import { readExposure } from '../image/readExposure';
import { readFocalLength } from '../image/readFocalLength';
import { readJpegQuality } from '../image/readJpegQuality';
import { turnedUpright, webpOrientation, webpWithoutExif } from '../image/webpTurn';

/**
 * Decodes a photo, upright and in sRGB: with the browser's own decoder, or with ours where that cannot read HEIC.
 *
 * @throws Refusal if the file is not a whole photo of a usable size.
 */
export async function decodePhoto(file: Blob): Promise<Photo> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  checkPhotoFile(bytes);
  const orientation = webpOrientation(bytes);
  const stored = orientation === 1 ? file : new Blob([webpWithoutExif(bytes)], { type: 'image/webp' });
  const bitmap = await createImageBitmap(stored).catch(() => null);
  const pixels = bitmap ? turnedUpright(pixelsOf(bitmap), orientation) : await decodeOurselves(bytes);
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
  const { width, height } = bitmap;
  const canvas = new OffscreenCanvas(1, 1);
  try {
    checkSize(width, height);
    Object.assign(canvas, { width, height });
    const context = canvas.getContext('2d', { willReadFrequently: true, colorSpace: 'srgb' });
    if (!context) throw new Error('The browser gives no canvas to decode the photo on.');
    context.drawImage(bitmap, 0, 0);
    return { widthPx: width, heightPx: height, rgba: context.getImageData(0, 0, width, height).data };
  } finally {
    bitmap.close();
    // Its pixels go now, and not when the next collection finds them.
    Object.assign(canvas, { width: 0, height: 0 });
  }
}
