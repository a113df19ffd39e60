import { KEPT } from '../journal/keptSize';
import type { KeptPhoto } from '../journal/openJournal';

/**
 * A photo at the size the journal keeps, with its thumbnail, under the SHA-256 of the original.
 *
 * @param picture - Of the photo, where the browser cannot show the photo itself.
 */
export async function keptPhoto(file: Blob, picture: Blob = file): Promise<KeptPhoto> {
  const digest = await crypto.subtle.digest('SHA-256', await file.arrayBuffer());
  const key = [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  const bitmap = await createImageBitmap(picture);
  try {
    const [photo, thumbnail] = [await jpegOf(bitmap, KEPT.photoPx), await jpegOf(bitmap, KEPT.thumbnailPx)];
    return { key, photo, thumbnail };
  } finally {
    bitmap.close();
  }
}

async function jpegOf(bitmap: ImageBitmap, longestPx: number): Promise<Blob> {
  const scale = Math.min(1, longestPx / Math.max(bitmap.width, bitmap.height));
  const canvas = new OffscreenCanvas(Math.round(bitmap.width * scale), Math.round(bitmap.height * scale));
  const context = canvas.getContext('2d');
  if (!context) throw new Error('This browser draws no pictures off the screen.');
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  return canvas.convertToBlob({ type: 'image/jpeg', quality: KEPT.quality });
}
