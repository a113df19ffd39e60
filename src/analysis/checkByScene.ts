import { TRAY_PLACES } from '../measure/trayLight';
import type { Rig, RigChangeCode, RigCheck, RigScene } from './report';
import { shadowTurn } from './shadowTurn';

/** Focal lengths differ when this share apart: a zoom or another lens. */
const FOCAL_SHARE = 0.02;
/** Change of the light's falloff, ln units across the picture: other stones alone change it by up to 0.04 (path-traced trays). */
const TILT_LN = 0.08;
/** Change of the tray's color, ln units, and of its light, that another exposure does not explain. */
const COLOR_LN = 0.1;
const MOST_STOPS = 2;
/** The tray may differ so much from what the file says of the exposure, ln units: stops are rounded to sixths. */
const STATED_LN = 0.15;
/** Exposures nearer than this are one, ln units. */
const EXPOSURE_LN = 0.08;
/** Blur that is lost focus: times the remembered one, and pixels in quadrature. */
const BLUR = { times: 1.4, addedPx: 0.6 };
/** Tray darker or brighter than this tells nothing: noise, and the camera's limit. */
const READABLE = { least: 0.004, most: 0.93 };
/** Fewer readable places of the nine tell nothing of the falloff. */
const FEWEST_PLACES = 5;

/**
 * Compares a photo without a ball with the scene that was remembered with the rig.
 *
 * @param own - This photo's scene.
 * @param rig - The remembered rig.
 */
export function checkByScene(own: RigScene, rig: Rig & { readonly scene: RigScene }): RigCheck {
  const kept = rig.scene;
  const tray = trayChange(own, kept);
  const shadow = shadowTurn(own, rig);
  const changes: RigChangeCode[] = [];
  const isTilted = tray !== null && tray.tilt > TILT_LN;
  if (isTilted || shadow?.isTurned) changes.push('lamp-moved');
  if (!isSameView(own, kept)) changes.push('camera-moved');
  if (isBlurrier(own, kept)) changes.push('focus-lost');
  const isOther = tray === null || tray.color > COLOR_LN || isOtherLight(tray.level, own, kept);
  if (isOther) changes.push('tray-changed');
  else if (Math.abs(tray.level) > EXPOSURE_LN) changes.push('exposure-changed');
  return {
    byBall: false,
    changes,
    lampOffDeg: null,
    lampSizeRatio: null,
    shadowTurnDeg: shadow?.turnDeg ?? null,
    trayTilt: tray?.tilt ?? null,
    scaleRatio: null,
    blurPx: own.edgeBlurPx !== null && kept.edgeBlurPx !== null ? [own.edgeBlurPx, kept.edgeBlurPx] : null,
    exposureRatio: isOther ? null : Math.exp(tray.level),
  };
}

/** Whether more than the exposure changed: a lamp brought nearer or dimmed, or another tray. */
function isOtherLight(level: number, own: RigScene, kept: RigScene): boolean {
  if (Math.abs(level) > MOST_STOPS * Math.LN2) return true;
  if (!own.exposure || !kept.exposure) return false;
  return Math.abs(level - Math.log(own.exposure / kept.exposure)) > STATED_LN;
}

function isSameView(own: RigScene, kept: RigScene): boolean {
  if (own.widthPx !== kept.widthPx || own.heightPx !== kept.heightPx) return false;
  const [now, then] = [own.focalLength35Mm, kept.focalLength35Mm];
  return now === null || then === null || Math.abs(Math.log(now / then)) < FOCAL_SHARE;
}

function isBlurrier({ edgeBlurPx: now }: RigScene, { edgeBlurPx: then }: RigScene): boolean {
  if (now === null || then === null) return false;
  return now > BLUR.times * then && Math.sqrt(now ** 2 - then ** 2) > BLUR.addedPx;
}

/** Mean change of the tray's light and color, and of its falloff across the picture, ln units; null when unreadable. */
function trayChange(own: RigScene, kept: RigScene): { level: number; color: number; tilt: number } | null {
  const isReadable = (light: readonly number[]) =>
    Math.min(...light) > READABLE.least && Math.max(...light) < READABLE.most;
  const places = own.tray
    .map((now, i) => ({
      now,
      before: kept.tray[i]!,
      x: TRAY_PLACES[i % 3]!,
      y: TRAY_PLACES[Math.floor(i / 3)]!,
    }))
    .filter(({ now, before }) => isReadable(now) && isReadable(before))
    .map(({ now, before, x, y }) => ({ x, y, ln: now.map((light, c) => Math.log(light / before[c]!)) }));
  if (places.length < FEWEST_PLACES) return null;
  const mean = (value: (place: (typeof places)[number]) => number) =>
    places.reduce((sum, place) => sum + value(place), 0) / places.length;
  const level = mean(({ ln }) => ln[1]!);
  const slope = (key: 'x' | 'y') => {
    const middle = mean((place) => place[key]);
    const square = mean((place) => (place[key] - middle) ** 2);
    return square > 0 ? mean((place) => (place[key] - middle) * (place.ln[1]! - level)) / square : 0;
  };
  return {
    level,
    color: Math.max(Math.abs(mean(({ ln }) => ln[0]! - ln[1]!)), Math.abs(mean(({ ln }) => ln[2]! - ln[1]!))),
    tilt: Math.hypot(slope('x'), slope('y')),
  };
}
