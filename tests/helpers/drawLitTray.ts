import type { Photo } from '../../src/image/photo';
import type { Raster } from '../../src/image/raster';
import type { DrawnLamp } from './drawnLamp';
import { type DrawnBody, type DrawnCamera, drawScene, takePhoto } from './drawScene';
import { TRAY_BALL, TRAY_LAMP, TRAY_PX_PER_MM, TRAY_STONES } from './drawTray';

export const LIT_TRAY_MM = { width: 80, height: 60 };

/** The sharp picture of a tray under several lamps: light adds up, so each lamp is drawn alone. */
export function drawLights(lamps: readonly DrawnLamp[], bodies: readonly DrawnBody[]): Raster {
  const size = {
    widthPx: LIT_TRAY_MM.width * TRAY_PX_PER_MM,
    heightPx: LIT_TRAY_MM.height * TRAY_PX_PER_MM,
    pxPerMm: TRAY_PX_PER_MM,
  };
  const [first, ...others] = lamps.map((lamp, k) =>
    drawScene({ ...size, lamp, ambient: k === 0 ? 0.12 : 0, tray: 0.6, samples: 2, bodies }),
  );
  for (const { data } of others) for (let i = 0; i < data.length; i++) first!.data[i]! += data[i]!;
  return first!;
}

/** A photo of the ball and three stones, or of other bodies beside the ball, under one lamp or more. */
export function drawLitTray(
  camera: Partial<DrawnCamera> = {},
  lamps: readonly DrawnLamp[] = [TRAY_LAMP],
  stones: readonly DrawnBody[] = TRAY_STONES,
): Photo {
  return takePhoto(drawLights(lamps, [TRAY_BALL, ...stones]), { blurPx: 0.9, grain: 0.01, ...camera });
}

/** Row and column in the photo of a place on the drawn tray, mm. */
export const litTrayPixel = (x: number, y: number): readonly [number, number] => [
  (LIT_TRAY_MM.height * TRAY_PX_PER_MM) / 2 - 0.5 - y * TRAY_PX_PER_MM,
  (LIT_TRAY_MM.width * TRAY_PX_PER_MM) / 2 - 0.5 + x * TRAY_PX_PER_MM,
];
