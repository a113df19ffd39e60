import { useCallback, useEffect, useRef, useState } from 'react';
import type { PreviewClient } from '../../camera/preview';
import { takeBurst } from './takeBurst';
import type { LiveCamera } from './useCamera';

/** Takes bursts, and knows whether the last one failed. */
export interface Burst {
  readonly hasFailed: boolean;
  readonly shoot: () => void;
}

interface Way {
  /** Waited for before the first photo. */
  readonly prepare: () => Promise<void>;
  /** Told which photo of the burst is being taken, 1 and up; 0 afterwards. */
  readonly onNumber: (number: number) => void;
  /** Given the sharpest. */
  readonly onShot: (file: File) => void;
}

/** Takes a burst and hands over the sharpest photo; stops when the camera goes. */
export function useBurst(
  camera: LiveCamera | null,
  client: PreviewClient<ImageBitmap, Blob> | null,
  { prepare, onNumber, onShot }: Way,
): Burst {
  const [hasFailed, setFailed] = useState(false);
  const running = useRef<AbortController | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a burst belongs to one camera
  useEffect(() => () => running.current?.abort(), [camera]);
  const shoot = useCallback(async () => {
    if (camera === null || client === null || running.current !== null) return;
    const stop = new AbortController();
    running.current = stop;
    const { signal } = stop;
    setFailed(false);
    onNumber(1);
    try {
      await prepare();
      const photo = await takeBurst(camera.shutter.take, (one) => client.sharpnessOf(one), {
        onShot: onNumber,
        signal,
      });
      onShot(asFile(photo));
    } catch {
      setFailed(!signal.aborted);
    } finally {
      running.current = null;
      onNumber(0);
    }
  }, [camera, client, prepare, onNumber, onShot]);
  return { hasFailed, shoot: () => void shoot() };
}

function asFile(photo: Blob): File {
  const type = photo.type || 'image/jpeg';
  const now = new Date();
  const clock = [now.getHours(), now.getMinutes(), now.getSeconds()].map((part) =>
    `${part}`.padStart(2, '0'),
  );
  return new File([photo], `tray at ${clock.join('.')}.${type === 'image/png' ? 'png' : 'jpg'}`, { type });
}
