import type { Rig, RigCheck, RigScene } from './report';

/** Spread of the lamp's radiance that is left, ln units. */
const RADIANCE_SD = {
  /** The same exposure, told by the tray: its light varies this much with what else lies on it. */
  steady: 0.03,
  /** Share of a change of exposure by which it can be wrong: cameras bend their tones. */
  perChange: 0.15,
  /** The exposure is not known: one stop. */
  unknown: Math.LN2,
};
/** Photos whose sides are in one proportion this near are one picture in two sizes. */
const SHAPE_SHARE = 0.005;

/** The remembered rig as it stands for one photo without a ball. */
export interface CorrectedRig {
  readonly rig: Rig;
  /** Spread of the logarithm of the lamp's radiance beyond that of a ball's reading. */
  readonly radianceSd: number;
  /** True when lamp or camera moved, so that no highlight can be read by them. */
  readonly isMoved: boolean;
}

/**
 * Corrects a remembered rig for what a photo without a ball shows: exposure, blur and size of the photo.
 *
 * Light and exposure time enter tray and highlight alike, so the tray's ratio is the highlight's. Blurs add in
 * quadrature. A photo of the same shape and another size is taken for the same picture made smaller or larger.
 *
 * @param kept - The remembered rig.
 * @param scene - What the photo shows.
 * @param check - Their comparison; null when the rig was saved without a scene: nothing is then corrected.
 */
export function correctRig(kept: Rig, scene: RigScene, check: RigCheck | null): CorrectedRig {
  if (!check || !kept.scene) return { rig: kept, radianceSd: RADIANCE_SD.unknown, isMoved: false };
  const { exposureRatio } = check;
  const sizing = resizing(kept.scene, scene);
  const [now, then] = check.blurPx ?? [0, 0];
  const blurPx = Math.sqrt((kept.blurPx * sizing) ** 2 + Math.max(0, now ** 2 - (then * sizing) ** 2));
  return {
    rig: {
      ...kept,
      mmPerPx: kept.mmPerPx / sizing,
      blurPx,
      lampRadiance: kept.lampRadiance * (exposureRatio ?? 1),
    },
    radianceSd:
      exposureRatio === null
        ? RADIANCE_SD.unknown
        : Math.hypot(RADIANCE_SD.steady, RADIANCE_SD.perChange * Math.log(exposureRatio)),
    isMoved: check.changes.includes('lamp-moved') || check.changes.includes('camera-moved'),
  };
}

/** How many times larger the photo is than the remembered one; 1 when they are not of one shape. */
function resizing(then: RigScene, now: RigScene): number {
  const [wide, high] = [now.widthPx / then.widthPx, now.heightPx / then.heightPx];
  return Math.abs(Math.log(wide / high)) < SHAPE_SHARE ? wide : 1;
}
