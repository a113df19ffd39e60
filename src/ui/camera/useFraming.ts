import { type RefObject, useEffect, useState } from 'react';
import type { Rig } from '../../analysis/report';
import { frameSize } from '../../camera/frameSize';
import { type Framing, framedWith, NO_FRAMING, nextLook } from '../../camera/framing';
import type { PreviewClient } from '../../camera/preview';
import { rigInFrame } from '../../camera/rigInFrame';
import type { LiveCamera } from './useCamera';
import { nextFrame, smallFrame } from './videoFrames';

/** The tray's ball and the remembered rig, as for a photo. */
export interface TrayKnowledge {
  /** Diameter of the reference ball, mm; null when no ball lies in the tray. */
  readonly ballMm: number | null;
  readonly rig: Rig | null;
}

/**
 * Looks at the live picture frame after frame: always at the latest, and at the next only when done with one.
 *
 * @param videoRef - Shows the picture.
 * @param camera - Null while there is none.
 * @param isResting - True while photos are taken: what was seen last stays.
 */
export function useFraming(
  videoRef: RefObject<HTMLVideoElement | null>,
  camera: LiveCamera | null,
  client: PreviewClient<ImageBitmap, Blob> | null,
  { ballMm, rig }: TrayKnowledge,
  isResting: boolean,
): Framing {
  const [framing, setFraming] = useState(NO_FRAMING);
  const isLive = camera !== null;
  useEffect(() => {
    if (!isLive) setFraming(NO_FRAMING);
  }, [isLive]);
  useEffect(() => {
    const video = videoRef.current;
    if (video === null || camera === null || client === null || isResting) return;
    let isOver = false;
    const { shotPx } = camera.shutter;
    const lookOn = async () => {
      let seen = NO_FRAMING;
      while (!isOver) {
        await nextFrame(video);
        if (isOver) return;
        const { widthPx, heightPx } = frameSize(video.videoWidth, video.videoHeight);
        const inFrame = rig && rigInFrame(rig, shotPx, Math.max(widthPx, heightPx));
        const known = nextLook(seen, { ballMm, rig: ballMm === null ? inFrame : null });
        const preview = await client.look(await smallFrame(video), known);
        if (isOver || preview === null) continue;
        seen = framedWith(seen, preview, shotPx);
        setFraming(seen);
      }
    };
    lookOn().catch(() => {
      if (!isOver) setFraming({ ...NO_FRAMING, advice: 'unchecked' });
    });
    return () => {
      isOver = true;
    };
  }, [videoRef, camera, client, ballMm, rig, isResting]);
  return framing;
}
