import { checkPhotoFile } from '../image/checkPhotoFile';
import { checkSize } from '../image/checkSize';
import { Refusal } from '../image/notice';
import type { Photo } from '../image/photo';
import { readExposure } from '../image/readExposure';
import { readFocalLength } from '../image/readFocalLength';
import { readJpegQuality } from '../image/readJpegQuality';

/**
 * Decodes a photo with the browser's own decoder: upright (EXIF), in sRGB.
 *
 * @throws Refusal if the file is not a whole photo of a usable size.
 */
export async function decodePhoto(file: Blob): Promise<Photo> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  checkPhotoFile(bytes);
  const bitmap = await createImageBitmap(file).catch(() => {
    throw new Refusal('not-an-image');
  });
  try {
    checkSize(bitmap.width, bitmap.height);
    const [focalLength35Mm, exposure] = await Promise.all([readFocalLength(bytes), readExposure(bytes)]);
    return { ...photoOf(bitmap), focalLength35Mm, exposure, jpegQuality: readJpegQuality(bytes) };
  } finally {
    bitmap.close();
  }
}

function photoOf(bitmap: ImageBitmap): Photo {
  const { width, height } = bitmap;
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d', { willReadFrequently: true, colorSpace: 'srgb' });
  if (!context) throw new Error('The browser gives no canvas to decode the photo on.');
  context.drawImage(bitmap, 0, 0);
  return { widthPx: width, heightPx: height, rgba: context.getImageData(0, 0, width, height).data };
}
