import { frameSize } from '../../camera/frameSize';

/** Strong enough to keep the edges of highlights, see the check `compressed` of a photo. */
const JPEG_QUALITY = 0.95;

/** Waits for the next frame of a video; where the browser cannot tell, for the next time the page is drawn. */
export function nextFrame(video: HTMLVideoElement): Promise<void> {
  return new Promise((resolve) => {
    if ('requestVideoFrameCallback' in video) video.requestVideoFrameCallback(() => resolve());
    else requestAnimationFrame(() => resolve());
  });
}

/** The frame being shown, reduced for a quick look. */
export function smallFrame(video: HTMLVideoElement): Promise<ImageBitmap> {
  const { widthPx, heightPx } = frameSize(video.videoWidth, video.videoHeight);
  return createImageBitmap(video, { resizeWidth: widthPx, resizeHeight: heightPx, resizeQuality: 'medium' });
}

/**
 * The frame being shown, in full size, as a JPEG.
 *
 * @throws Error if the browser gives no canvas.
 */
export async function frameToJpeg(video: HTMLVideoElement): Promise<Blob> {
  const canvas = document.createElement('canvas');
  canvas.width = video.videoWidth;
  canvas.height = video.videoHeight;
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('The browser gives no canvas to take the photo on.');
  context.drawImage(video, 0, 0);
  const blob = await new Promise<Blob | null>((resolve) => {
    canvas.toBlob(resolve, 'image/jpeg', JPEG_QUALITY);
  });
  if (blob === null) throw new Error('The photo could not be saved.');
  return blob;
}
