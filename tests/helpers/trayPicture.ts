import type { Raster } from '../../src/image/raster';
import { shrinkPhoto } from '../../src/image/shrinkPhoto';
import type { Circle } from '../../src/measure/circleFit';
import type { DrawnBody, DrawnCamera } from './drawScene';
import { drawTray, TRAY_BALL, TRAY_LAMP, TRAY_PX_PER_MM } from './drawTray';

/** Row and column of a place on the drawn tray. */
export const trayPixel = (
  [x, y]: readonly [number, number, ...number[]],
  picture: { width: number; height: number },
) => ({
  row: picture.height / 2 - 0.5 - y * TRAY_PX_PER_MM,
  column: picture.width / 2 - 0.5 + x * TRAY_PX_PER_MM,
});

/** Direction of the drawn lamp in the picture. */
export const TRAY_SIDE: readonly [number, number] = (() => {
  const [x, y] = TRAY_LAMP.direction;
  return [x / Math.hypot(x, y), y / Math.hypot(x, y)];
})();

/** The photo of a drawn tray as the small picture that stones are looked for in, and the ball in it. */
export function trayPicture(
  bodies: readonly DrawnBody[],
  camera?: DrawnCamera,
): { small: Raster; ball: Circle } {
  const small = shrinkPhoto(drawTray(bodies, camera), 900).raster;
  return {
    small,
    ball: { ...trayPixel(TRAY_BALL.center, small), radiusPx: TRAY_BALL.halfAxes[0] * TRAY_PX_PER_MM },
  };
}

/** The same picture, left and right swapped. */
export function mirrored(picture: Raster): Raster {
  const { width, channels } = picture;
  const data = picture.data.map((_, k) => {
    const i = Math.floor(k / channels);
    const column = i % width;
    return picture.data[channels * (i - column + width - 1 - column) + (k % channels)]!;
  });
  return { ...picture, data };
}

/** The same picture with each channel's light multiplied. */
export function lit(picture: Raster, factors: readonly [number, number, number]): Raster {
  return { ...picture, data: picture.data.map((value, k) => value * factors[k % 3]!) };
}
