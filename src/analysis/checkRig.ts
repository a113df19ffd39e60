import { checkByBall } from './checkByBall';
import { checkByScene } from './checkByScene';
import type { Rig, RigCheck, RigScene } from './report';

/** A photo's own lamp and camera, read with or without the ball. */
export interface OwnReading {
  /** Read off the ball; null without one. */
  readonly rig: Rig | null;
  readonly scene: RigScene;
}

/**
 * Compares a photo's lamp and camera with the remembered ones.
 *
 * With the ball in the tray all is read anew and compared directly. Without it tray light, shadows, edges and the
 * size of the photo must do: a lamp that came nearer along its own light, or a camera raised a little, can pass.
 *
 * @param own - What this photo tells.
 * @param kept - The remembered rig.
 * @returns The comparison; null when there is no ball and the rig was saved without a scene.
 */
export function checkRig(own: OwnReading, kept: Rig): RigCheck | null {
  if (own.rig) return checkByBall(own.rig, own.scene, kept);
  return kept.scene ? checkByScene(own.scene, { ...kept, scene: kept.scene }) : null;
}
