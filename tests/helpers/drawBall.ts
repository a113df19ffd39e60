import { cropLinear } from '../../src/image/cropLinear';
import type { Raster } from '../../src/image/raster';
import type { Circle } from '../../src/measure/circleFit';
import type { DrawnLamp } from './drawnLamp';
import { type DrawnCamera, drawScene, plain, takePhoto } from './drawScene';

const PX_PER_MM = 8;

/** A dark glass ball in an empty tray, photographed: the 8-bit picture in linear light, and where the ball truly is. */
export function drawBall(lamp: DrawnLamp, camera: DrawnCamera, radiusMm = 8): { crop: Raster; ball: Circle } {
  const sidePx = 2 * Math.round(1.25 * radiusMm * PX_PER_MM);
  // A little off the middle, so that the pixels do not lie evenly around it.
  const [x, y] = [0.13, -0.09];
  const sharp = drawScene({
    widthPx: sidePx,
    heightPx: sidePx,
    pxPerMm: PX_PER_MM,
    lamp,
    ambient: 0.12,
    tray: 0.6,
    samples: 4,
    bodies: [
      {
        center: [x, y, radiusMm],
        halfAxes: [radiusMm, radiusMm, radiusMm],
        turnDeg: 0,
        n: 1.52,
        alpha: 0,
        colorAt: plain(0.01),
      },
    ],
  });
  const crop = cropLinear(takePhoto(sharp, camera), { row: 0, column: 0, width: sidePx, height: sidePx });
  const middle = (sidePx - 1) / 2;
  return {
    crop,
    ball: { row: middle - y * PX_PER_MM, column: middle + x * PX_PER_MM, radiusPx: radiusMm * PX_PER_MM },
  };
}
