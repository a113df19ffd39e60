import { useCallback, useEffect, useState } from 'react';
import { type Holdable, nextCompensation } from '../../camera/cameraHold';
import { freeCamera, holdCamera, settingsOf } from './holdCamera';
import { applySettings } from './openCamera';
import type { LiveCamera } from './useCamera';

/** Time a camera takes to settle on a new exposure, ms; common practice, about a dozen frames. */
const SETTLE_MS = 700;

/** Whether the camera is held, and the ways to change that. */
export interface Hold {
  readonly held: readonly Holdable[];
  /** True when the person let it go: then only a photo holds it again. */
  readonly isLetGo: boolean;
  readonly hold: () => Promise<void>;
  readonly letGo: () => Promise<void>;
  /** Makes the picture darker (−1) or lighter (1); null where the camera cannot. */
  readonly darker: (() => void) | null;
  readonly lighter: (() => void) | null;
}

/**
 * Holds exposure, focus and white balance of a camera.
 *
 * @param camera - Null while there is none.
 * @param isGood - True while the picture is as it should be: then the camera is held, unless a person let it go.
 */
export function useHold(camera: LiveCamera | null, isGood: boolean): Hold {
  const [held, setHeld] = useState<readonly Holdable[]>([]);
  const [isLetGo, setLetGo] = useState(false);
  const [stops, setStops] = useState(0);
  useEffect(() => {
    if (camera === null) return;
    setHeld([]);
    setLetGo(false);
    const present = settingsOf(camera.track).exposureCompensation;
    setStops(typeof present === 'number' ? present : 0);
  }, [camera]);
  const hold = useCallback(async () => {
    if (camera !== null) setHeld(await holdCamera(camera.track, camera.abilities));
  }, [camera]);
  useEffect(() => {
    if (isGood && !isLetGo) void hold();
  }, [isGood, isLetGo, hold]);
  const letGo = useCallback(async () => {
    setLetGo(true);
    setHeld([]);
    if (camera !== null) await freeCamera(camera.track, camera.abilities);
  }, [camera]);
  const step = (direction: -1 | 1) => {
    const next = camera && nextCompensation(camera.abilities, stops, direction);
    if (camera === null || next === null) return null;
    return () => {
      setStops(next);
      void shiftExposure(camera, next).then(setHeld);
    };
  };
  return { held, isLetGo, hold, letGo, darker: step(-1), lighter: step(1) };
}

/** A held exposure cannot be shifted: it is let go, shifted, and held again where it settles. */
async function shiftExposure({ track, abilities }: LiveCamera, stops: number): Promise<readonly Holdable[]> {
  await freeCamera(track, abilities);
  await applySettings(track, { exposureCompensation: stops });
  await new Promise((resolve) => setTimeout(resolve, SETTLE_MS));
  return holdCamera(track, abilities);
}
