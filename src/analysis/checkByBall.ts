import { combine, dot, normalize, type Vector } from '../optics/vector';
import type { Rig, RigChangeCode, RigCheck, RigScene } from './report';
import { shadowTurn } from './shadowTurn';

/** Largest change of the lamp's direction that is no move: several times what one reading is off by, degrees. */
const LAMP_OFF_DEG = 3;
const LAMP_SIZE_SHARE = 0.1;
const SCALE_SHARE = 0.02;
/** The camera may look down this much askew: the scale then changes across the tray, radians. */
const ASKEW_RAD = 0.09;
/** Blur that is lost focus: times the remembered one, and pixels in quadrature. */
const BLUR = { times: 1.4, addedPx: 0.5 };
/** Exposures nearer than this are one, ln units: the ball's plateau is read within a few percent. */
const EXPOSURE_LN = 0.08;
/** Lamps are at least this far from the tray, mm. Common practice: a desk lamp stands 0.4 to 1 m away. */
const NEAREST_LAMP_MM = 400;
const DISTANCES_TRIED = 60;
/** Taken for the camera's distance when the file states no focal length, mm. */
const USUAL_CAMERA_MM = 500;
/** Diagonal of the 36 × 24 mm frame that equivalent focal lengths refer to, mm. */
const FRAME_DIAGONAL_MM = 43.27;

/**
 * Compares what the ball of a photo tells with the remembered rig; a lamp whose turn around the tray another place
 * of the ball could explain is given away by the shadows of all stones.
 *
 * @param own - Read off this photo's ball.
 * @param scene - Of this photo.
 * @param kept - The remembered rig.
 */
export function checkByBall(own: Rig, scene: RigScene, kept: Rig): RigCheck {
  const shift = ballShift(own, scene, kept);
  const lamp = lampChange(own, kept, shift ?? [0, 0, 0]);
  const scaleRatio = own.mmPerPx / kept.mmPerPx;
  const isSameSize =
    !kept.scene || (kept.scene.widthPx === scene.widthPx && kept.scene.heightPx === scene.heightPx);
  const askew = (ASKEW_RAD * Math.hypot(...(shift ?? [0, 0, 0]))) / cameraMm(own, scene);
  const addedPx = Math.sqrt(Math.max(0, own.blurPx ** 2 - kept.blurPx ** 2));
  const exposureRatio = own.lampRadiance / kept.lampRadiance;
  const changes: RigChangeCode[] = [];
  const shadow = shadowTurn(scene, kept);
  const isOff = lamp.offDeg > LAMP_OFF_DEG || Math.abs(Math.log(lamp.sizeRatio)) > LAMP_SIZE_SHARE;
  if (isOff || shadow?.isTurned) changes.push('lamp-moved');
  if (!isSameSize || Math.abs(Math.log(scaleRatio)) > SCALE_SHARE + askew) changes.push('camera-moved');
  if (own.blurPx > BLUR.times * kept.blurPx && addedPx > BLUR.addedPx) changes.push('focus-lost');
  if (Math.abs(Math.log(exposureRatio)) > EXPOSURE_LN) changes.push('exposure-changed');
  return {
    byBall: true,
    changes,
    lampOffDeg: lamp.offDeg,
    lampSizeRatio: lamp.sizeRatio,
    shadowTurnDeg: shadow?.turnDeg ?? null,
    trayTilt: null,
    scaleRatio,
    blurPx: [own.blurPx, kept.blurPx],
    exposureRatio,
  };
}

/** Where the ball lies now as seen from where it lay, mm: x right, y up, z to the camera; null when not known. */
function ballShift(own: Rig, scene: RigScene, kept: Rig): Vector | null {
  const [now, then] = [scene.ballAt, kept.scene?.ballAt];
  if (!now || !then) return null;
  return [(now[1] - then[1]) * own.mmPerPx, (then[0] - now[0]) * own.mmPerPx, 0];
}

/**
 * Change of the lamp's direction and size that no distance of a lamp left alone explains.
 *
 * A lamp at distance D along d is seen from a ball moved by s along D·d − s, and |D·d − s| away, so its size
 * changes by D / |D·d − s|. The distance is not known: the one that explains the reading best is taken.
 */
function lampChange(own: Rig, kept: Rig, shift: Vector): { offDeg: number; sizeRatio: number } {
  let best = { offDeg: Infinity, sizeRatio: 1, misfit: Infinity };
  const seen = own.light.angularDiameterDeg / kept.light.angularDiameterDeg;
  for (let k = 0; k <= DISTANCES_TRIED; k++) {
    const perMm = k / DISTANCES_TRIED / NEAREST_LAMP_MM;
    const toLamp = combine([1, kept.light.direction], [-perMm, shift]);
    const cos = Math.min(1, dot(normalize(toLamp), own.light.direction));
    const offDeg = (Math.acos(cos) * 180) / Math.PI;
    const sizeRatio = seen * Math.hypot(...toLamp);
    const misfit = Math.hypot(offDeg / LAMP_OFF_DEG, Math.log(sizeRatio) / LAMP_SIZE_SHARE);
    if (misfit < best.misfit) best = { offDeg, sizeRatio, misfit };
  }
  return best;
}

function cameraMm(own: Rig, { widthPx, heightPx, focalLength35Mm }: RigScene): number {
  if (focalLength35Mm === null) return USUAL_CAMERA_MM;
  return (focalLength35Mm / FRAME_DIAGONAL_MM) * Math.hypot(widthPx, heightPx) * own.mmPerPx;
}
