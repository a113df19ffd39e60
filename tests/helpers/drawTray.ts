import type { Photo } from '../../src/image/photo';
import { lampAt } from './drawnLamp';
import { type DrawnBody, type DrawnCamera, drawScene, plain, takePhoto } from './drawScene';

export const TRAY_PX_PER_MM = 8;
export const TRAY_BALL_MM = 16;
export const TRAY_LAMP = lampAt(40, 120, 12, 16);

/** The dark glass ball, lower left. */
export const TRAY_BALL: DrawnBody = {
  center: [-26, -17, TRAY_BALL_MM / 2],
  halfAxes: [TRAY_BALL_MM / 2, TRAY_BALL_MM / 2, TRAY_BALL_MM / 2],
  turnDeg: 0,
  n: 1.52,
  alpha: 0,
  colorAt: plain(0.01),
};

/** Three stones of rising roughness in reading order. */
export const TRAY_STONES: readonly DrawnBody[] = [
  {
    center: [-20, 14, 5.5],
    halfAxes: [10, 7.5, 5.5],
    turnDeg: 20,
    n: 1.54,
    alpha: 0.03,
    colorAt: plain(0.3, 0.1, 0.05),
  },
  {
    center: [12, 13, 6],
    halfAxes: [11, 8.5, 6],
    turnDeg: -30,
    n: 1.54,
    alpha: 0.08,
    colorAt: plain(0.06, 0.09, 0.05),
  },
  {
    center: [18, -14, 5],
    halfAxes: [8.5, 7.5, 5],
    turnDeg: 70,
    n: 1.54,
    alpha: 0.2,
    colorAt: plain(0.2, 0.14, 0.08),
  },
];

/** A gray tray of 80 × 60 mm from straight above, with what is laid in it. */
export function drawTray(
  bodies: readonly DrawnBody[],
  camera: DrawnCamera = { blurPx: 0.9, grain: 0.01 },
): Photo {
  const size = { widthPx: 80 * TRAY_PX_PER_MM, heightPx: 60 * TRAY_PX_PER_MM, pxPerMm: TRAY_PX_PER_MM };
  return takePhoto(
    drawScene({ ...size, lamp: TRAY_LAMP, ambient: 0.12, tray: 0.6, samples: 2, bodies }),
    camera,
  );
}
