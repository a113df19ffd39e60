import {
  type CameraAbilities,
  type CameraSettings,
  type Holdable,
  holdWishes,
} from '../../camera/cameraHold';
import { applySettings } from './openCamera';

type Track = Pick<MediaStreamTrack, 'applyConstraints' | 'getSettings'>;

/**
 * Holds exposure, focus and white balance where they are, each by itself: one that a camera refuses spoils no other.
 *
 * @returns What the camera says is held now.
 */
export async function holdCamera(track: Track, abilities: CameraAbilities): Promise<Holdable[]> {
  const held: Holdable[] = [];
  for (const { what, mode, hold } of holdWishes(abilities, settingsOf(track))) {
    const isApplied = await applySettings(track, hold);
    if (isApplied && settingsOf(track)[mode] === hold[mode]) held.push(what);
  }
  return held;
}

/** Lets the camera adjust itself again; in one call, so that it may be stopped right after. */
export async function freeCamera(track: Track, abilities: CameraAbilities): Promise<void> {
  const wishes = holdWishes(abilities, settingsOf(track));
  if (wishes.length > 0) await applySettings(track, ...wishes.map(({ free }) => free));
}

export const settingsOf = (track: Pick<MediaStreamTrack, 'getSettings'>): CameraSettings =>
  track.getSettings() as CameraSettings;
