import { type RefObject, useCallback, useEffect, useState } from 'react';
import { type CameraTrouble, cameraTrouble } from '../../camera/cameraTrouble';
import { freeCamera } from './holdCamera';
import { type OpenCamera, openCamera, stopCamera } from './openCamera';
import { openShutter, type Shutter } from './openShutter';

/** A camera whose picture runs. */
export interface LiveCamera extends OpenCamera {
  readonly shutter: Shutter;
}

/** The camera as the page has it. */
export type CameraStatus =
  | { readonly kind: 'opening' }
  | { readonly kind: 'live'; readonly camera: LiveCamera }
  | { readonly kind: 'trouble'; readonly trouble: CameraTrouble };

const OPENING: CameraStatus = { kind: 'opening' };

/**
 * Opens the camera and shows its picture; stops it when the page is left or hidden, and opens it again on return.
 *
 * @param videoRef - Shows the picture.
 * @returns The camera, and a way to try again after trouble.
 */
export function useCamera(videoRef: RefObject<HTMLVideoElement | null>): {
  readonly status: CameraStatus;
  readonly again: () => void;
} {
  const [status, setStatus] = useState(OPENING);
  const [attempt, setAttempt] = useState(0);
  const again = useCallback(() => setAttempt((count) => count + 1), []);
  const isVisible = usePageVisible();
  // biome-ignore lint/correctness/useExhaustiveDependencies: another attempt is another camera
  useEffect(() => {
    setStatus(OPENING);
    if (!isVisible || videoRef.current === null) return;
    return runCamera(videoRef.current, setStatus);
  }, [videoRef, isVisible, attempt]);
  return { status, again };
}

/** Opens the camera into a video; the function returned stops it, even while it still opens. */
function runCamera(video: HTMLVideoElement, tell: (status: CameraStatus) => void): () => void {
  let open: OpenCamera | null = null;
  let isOver = false;
  const stop = () => {
    isOver = true;
    if (open !== null) release(open);
    video.srcObject = null;
  };
  const fail = (trouble: CameraTrouble) => {
    if (isOver) return;
    stop();
    tell({ kind: 'trouble', trouble });
  };
  const start = async () => {
    const camera = await openCamera();
    open = camera;
    if (isOver) return release(camera);
    camera.track.addEventListener('ended', () => fail('lost'));
    video.srcObject = camera.stream;
    await video.play();
    const shutter = await openShutter(camera.track, video);
    if (!isOver) tell({ kind: 'live', camera: { ...camera, shutter } });
  };
  start().catch((error: unknown) => fail(cameraTrouble(error)));
  return stop;
}

/** Lets the camera adjust itself again and stops it, at once: a page being put away gets no other turn. */
function release({ stream, track, abilities }: OpenCamera): void {
  void freeCamera(track, abilities);
  stopCamera(stream);
}

/** False while the page is hidden: in another tab, behind another program, or in the browser's memory of pages. */
function usePageVisible(): boolean {
  const [isVisible, setVisible] = useState(() => document.visibilityState === 'visible');
  useEffect(() => {
    const look = () => setVisible(document.visibilityState === 'visible');
    const hide = () => setVisible(false);
    document.addEventListener('visibilitychange', look);
    window.addEventListener('pagehide', hide);
    window.addEventListener('pageshow', look);
    return () => {
      document.removeEventListener('visibilitychange', look);
      window.removeEventListener('pagehide', hide);
      window.removeEventListener('pageshow', look);
    };
  }, []);
  return isVisible;
}
