import { type Warning, type WarningCode, warning } from '../image/notice';
import { checkRig } from './checkRig';
import { type CorrectedRig, correctRig } from './correctRig';
import type { Rig, RigChangeCode, RigCheck, RigScene } from './report';

/** The rig that a photo is measured by, and what is to be said about it. */
export interface HeldRig extends CorrectedRig {
  readonly check: RigCheck | null;
  readonly warnings: readonly Warning[];
}

/** What the ball makes up for by itself. */
const MADE_UP_FOR: readonly RigChangeCode[] = ['exposure-changed', 'tray-changed'];

/**
 * Decides by what lamp and camera a photo is measured: its own ball's, or the remembered ones as far as they hold.
 *
 * @param own - Read off this photo's ball; null without one.
 * @param scene - What the photo shows beside it.
 * @param kept - The remembered rig; null when there is none.
 * @returns null when there is neither.
 */
export function holdRig(own: Rig | null, scene: RigScene, kept: Rig | null): HeldRig | null {
  const check = kept && checkRig({ rig: own, scene }, kept);
  const changes = check?.changes ?? [];
  if (own) {
    const told = changes.filter((code) => !MADE_UP_FOR.includes(code));
    return { rig: { ...own, scene }, radianceSd: 0, isMoved: false, check, warnings: told.map(warning) };
  }
  if (!kept) return null;
  const told: readonly WarningCode[] = check ? changes : ['rig-unchecked'];
  return { ...correctRig(kept, scene, check), check, warnings: told.map(warning) };
}
