import { KEPT } from '../journal/keptSize';
import type { KeptPhoto } from '../journal/openJournal';
import { orCalledOff, tellerOf, type Watch } from '../progress/watch';
import { texts } from '../texts/speech';

/**
 * A photo at the size the journal keeps, with its thumbnail, under the SHA-256 of the original.
 *
 * @param watch - Twelve megapixels take 0.5 s on a computer, and a HEIC 2 s more where it is decoded for it.
 * @param pictureOf - Gives a picture of the photo, where the browser cannot show the photo itself.
 * @throws The reason for which it was called off.
 */
export async function keptPhoto(
  file: Blob,
  watch: Watch = {},
  pictureOf: (file: Blob) => Promise<Blob> = async (photo) => photo,
): Promise<KeptPhoto> {
  const tell = tellerOf(watch);
  const digest = await crypto.subtle.digest('SHA-256', await file.arrayBuffer());
  const key = [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  tell(0.1);
  const picture = await orCalledOff(watch, pictureOf(file));
  tell(0.3);
  const bitmap = await createImageBitmap(picture);
  try {
    tell(0.6);
    const photo = await jpegOf(bitmap, KEPT.photoPx);
    tell(0.9);
    const thumbnail = await jpegOf(bitmap, KEPT.thumbnailPx);
    tell(1);
    return { key, photo, thumbnail };
  } finally {
    bitmap.close();
  }
}

async function jpegOf(bitmap: ImageBitmap, longestPx: number): Promise<Blob> {
  const scale = Math.min(1, longestPx / Math.max(bitmap.width, bitmap.height));
  const canvas = new OffscreenCanvas(Math.round(bitmap.width * scale), Math.round(bitmap.height * scale));
  const context = canvas.getContext('2d');
  if (!context) throw new Error(texts().journal.storage.noPictures);
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  return canvas.convertToBlob({ type: 'image/jpeg', quality: KEPT.quality });
}
