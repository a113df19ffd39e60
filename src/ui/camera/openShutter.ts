import type { TakeOne } from './takeBurst';
import { frameToJpeg, nextFrame } from './videoFrames';

/** `ImageCapture` as far as it is used here; not every browser has it. */
interface StillCamera {
  getPhotoCapabilities(): Promise<{
    readonly imageWidth?: { readonly max: number };
    readonly imageHeight?: { readonly max: number };
    readonly fillLightMode?: readonly string[];
  }>;
  takePhoto(settings?: Readonly<Record<string, unknown>>): Promise<Blob>;
}

/** More pixels than this on the longer side bring nothing, see `openCamera`. */
const USEFUL_SIDE_PX = 4096;

/** How photos are taken, and how large they come out. */
export interface Shutter {
  readonly take: TakeOne;
  /** Longer side of a photo, pixels. */
  readonly shotPx: number;
}

/**
 * Finds the best way to take a photo: the camera's own stills, without flash, else frames of the live picture.
 *
 * @param track - The open camera.
 * @param video - Shows its live picture.
 */
export async function openShutter(track: MediaStreamTrack, video: HTMLVideoElement): Promise<Shutter> {
  const fromFrame = async () => {
    await nextFrame(video);
    return frameToJpeg(video);
  };
  const videoPx = Math.max(video.videoWidth, video.videoHeight);
  const still = stillCameraOf(track);
  const offered = await still?.getPhotoCapabilities().catch(() => null);
  if (!still || !offered) return { take: fromFrame, shotPx: videoPx };
  const width = offered.imageWidth?.max ?? 0;
  const height = offered.imageHeight?.max ?? 0;
  if (Math.max(width, height) < videoPx) return { take: fromFrame, shotPx: videoPx };
  const share = Math.min(1, USEFUL_SIDE_PX / Math.max(width, height));
  const size = { imageWidth: Math.round(share * width), imageHeight: Math.round(share * height) };
  const flash = offered.fillLightMode?.includes('off') ? { fillLightMode: 'off' } : {};
  const take = () => still.takePhoto({ ...size, ...flash }).catch(fromFrame);
  return { take, shotPx: Math.max(size.imageWidth, size.imageHeight) };
}

function stillCameraOf(track: MediaStreamTrack): StillCamera | null {
  const Constructor = (globalThis as { ImageCapture?: new (track: MediaStreamTrack) => StillCamera })
    .ImageCapture;
  return Constructor ? new Constructor(track) : null;
}
