import { expect, it } from 'vitest';
import type { Raster } from '../../src/image/raster';
import { TRAY_PLACES, trayLight } from '../../src/measure/trayLight';
import { trayModel } from '../../src/measure/trayModel';

const [WIDTH, HEIGHT] = [240, 160];
const COLOR = [1.1, 1, 0.9];

/** A tray whose light falls off to the right, with a dark stone in the middle. */
function drawTray(exposure: number): Raster {
  const data = new Float32Array(3 * WIDTH * HEIGHT);
  for (let i = 0; i < data.length; i++) {
    const pixel = Math.floor(i / 3);
    const [row, column] = [Math.floor(pixel / WIDTH), pixel % WIDTH];
    const isStone = Math.hypot(row - HEIGHT / 2, column - WIDTH / 2) < 30;
    data[i] = exposure * (isStone ? 0.01 : trayAt(column / WIDTH - 0.5)) * COLOR[i % 3]!;
  }
  return { width: WIDTH, height: HEIGHT, channels: 3, data };
}

const trayAt = (x: number) => 0.3 * Math.exp(-0.4 * x);

it('tells the light and color of the bare tray at nine places, also under a stone', () => {
  trayLight(trayModel(drawTray(1))).forEach((light, i) => {
    const expected = trayAt(TRAY_PLACES[i % 3]!);
    light.forEach((value, c) => {
      expect(Math.abs(value / (expected * COLOR[c]!) - 1)).toBeLessThan(0.01);
    });
  });
});

it('law: light goes with the exposure, from a quarter to twice', () => {
  const once = trayLight(trayModel(drawTray(1)));
  for (const exposure of [0.25, 0.5, 0.8, 2]) {
    trayLight(trayModel(drawTray(exposure))).forEach((light, i) => {
      light.forEach((value, c) => {
        expect(Math.abs(value / (exposure * once[i]![c]!) - 1)).toBeLessThan(0.01);
      });
    });
  }
});
