import { displayLift } from './displayLift';

/** A photo as it is shown when it is not enlarged. */
export interface SmallPhoto {
  readonly picture: Blob;
  /** Size of the photo itself, upright. */
  readonly widthPx: number;
  readonly heightPx: number;
  /** How much it is brightened on the screen, see `displayLift`. */
  readonly lift: number;
}

/** Longer side, pixels: a phone's width three dots to the pixel. */
export const SMALL_PX = 1200;
const QUALITY = 0.9;

/**
 * Brings a photo to a size that a screen can show. Browsers hold all pixels of every picture they show, twice over: of
 * 12 megapixels 100 MB for each place where it stands, which a phone lacks while it measures.
 *
 * @param photo - One that the browser can show.
 * @returns Of a photo that cannot be made smaller, the photo.
 * @throws What says so when it cannot be shown.
 */
export async function smallPhoto(photo: Blob): Promise<SmallPhoto> {
  const { width: widthPx, height: heightPx } = await sizeOf(photo);
  const shown = await shrunk(photo, widthPx, heightPx).catch(() => ({ picture: photo, lift: 1 }));
  return { ...shown, widthPx, heightPx };
}

async function shrunk(
  photo: Blob,
  widthPx: number,
  heightPx: number,
): Promise<Pick<SmallPhoto, 'picture' | 'lift'>> {
  const scale = Math.min(1, SMALL_PX / Math.max(widthPx, heightPx));
  const bitmap = await createImageBitmap(photo, {
    resizeWidth: Math.max(1, Math.round(scale * widthPx)),
    resizeHeight: Math.max(1, Math.round(scale * heightPx)),
    resizeQuality: 'high',
  });
  const lift = displayLift(bitmap);
  if (scale === 1) {
    bitmap.close();
    return { picture: photo, lift };
  }
  const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
  const context = canvas.getContext('bitmaprenderer');
  if (!context) throw new Error('The browser gives no canvas to make the photo smaller on.');
  context.transferFromImageBitmap(bitmap);
  return { picture: await canvas.convertToBlob({ type: 'image/jpeg', quality: QUALITY }), lift };
}

/** Upright, without decoding it. */
function sizeOf(photo: Blob): Promise<{ width: number; height: number }> {
  const address = URL.createObjectURL(photo);
  const image = new Image();
  return new Promise<{ width: number; height: number }>((resolve, reject) => {
    image.onload = () => resolve({ width: image.naturalWidth, height: image.naturalHeight });
    image.onerror = () => reject(new Error('The browser cannot show this photo.'));
    image.src = address;
  }).finally(() => URL.revokeObjectURL(address));
}
