import type { CameraAbilities } from '../../camera/cameraHold';

/** More pixels than this bring nothing: flaws are read at 12 pixels per millimeter, of a tray 30 cm wide. */
const USEFUL = { width: 4096, height: 3072 };

/** An open camera. */
export interface OpenCamera {
  readonly stream: MediaStream;
  readonly track: MediaStreamTrack;
  readonly abilities: CameraAbilities;
}

/**
 * Opens the camera that faces away from the person, at the largest useful size, its torch off.
 *
 * @throws DOMException as `getUserMedia` does; `NotSupportedError` where the browser has no camera for pages.
 */
export async function openCamera(): Promise<OpenCamera> {
  if (!navigator.mediaDevices?.getUserMedia)
    throw new DOMException('No camera for pages.', 'NotSupportedError');
  const stream = await navigator.mediaDevices.getUserMedia({
    audio: false,
    video: {
      facingMode: { ideal: 'environment' },
      width: { ideal: USEFUL.width },
      height: { ideal: USEFUL.height },
    },
  });
  const track = stream.getVideoTracks()[0];
  if (!track) throw new DOMException('The stream has no picture.', 'NotFoundError');
  const abilities = (track.getCapabilities?.() ?? {}) as CameraAbilities;
  if (abilities.torch) await applySettings(track, { torch: false });
  return { stream, track, abilities };
}

/** Applies settings that only some browsers know; false when the camera refuses. */
export async function applySettings(
  track: Pick<MediaStreamTrack, 'applyConstraints'>,
  ...settings: readonly Readonly<Record<string, unknown>>[]
): Promise<boolean> {
  try {
    await track.applyConstraints({ advanced: [...settings] as MediaTrackConstraintSet[] });
    return true;
  } catch {
    return false;
  }
}

/** Ends every track of a stream: the camera's light goes out. */
export function stopCamera(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}
