import { expect, it } from 'vitest';
import type { Raster } from '../../src/image/raster';
import { ballFace } from '../../src/measure/ballFace';
import { lampRoundness } from '../../src/measure/lampRoundness';
import { drawBall } from '../helpers/drawBall';
import { lampAt } from '../helpers/drawnLamp';

const CAMERA = { blurPx: 0.5 };
const LAMP = lampAt(36, 20, 12, 16);
const whole = drawBall(LAMP, CAMERA);
const dark = drawBall({ ...LAMP, radiance: 0 }, CAMERA);
const shapeOf = (crop: Raster) =>
  lampRoundness(ballFace(crop, whole.ball)!, whole.ball, [0, 0, 1], CAMERA.blurPx)!;

/** The same ball, the lamp hidden on one side of a line through a point on its image. */
function hidden(row: number, column: number, turnDeg: number): Raster {
  const [down, right] = [Math.sin((turnDeg * Math.PI) / 180), Math.cos((turnDeg * Math.PI) / 180)];
  const data = whole.crop.data.map((value, k) => {
    const [y, x] = [Math.floor(k / 3 / whole.crop.width), Math.floor(k / 3) % whole.crop.width];
    return (y - row) * down + (x - column) * right > 0 ? dark.crop.data[k]! : value;
  });
  return { ...whole.crop, data };
}

it('finds a whole lamp even, wherever it stands', () => {
  for (const offAxisDeg of [5, 25, 45]) {
    const { crop, ball } = drawBall(lampAt(offAxisDeg, 70, 12, 16), CAMERA);
    const { evenness, skewness } = lampRoundness(ballFace(crop, ball)!, ball, [0, 0, 1], CAMERA.blurPx)!;
    expect(evenness).toBeGreaterThan(0.9);
    expect(skewness).toBeLessThan(0.05);
  }
});

it('finds half a lamp as uneven as half a disc: 1/4 − (4/3π)² over 1/4 = 0.28', () => {
  const { row, column } = shapeOf(whole.crop);
  for (const turnDeg of [0, 50, 90, 200]) {
    expect(Math.abs(shapeOf(hidden(row, column, turnDeg)).evenness - 0.28)).toBeLessThan(0.12);
  }
});

it('does not depend on the exposure', () => {
  const { evenness } = shapeOf(whole.crop);
  const dim = { ...whole.crop, data: whole.crop.data.map((value) => 0.5 * value) };
  expect(Math.abs(shapeOf(dim).evenness - evenness)).toBeLessThan(1e-4);
});

it('says nothing of a ball without a lamp', () => {
  const plain = { ...whole.crop, data: whole.crop.data.map(() => 0.2) };
  expect(lampRoundness(ballFace(plain, whole.ball)!, whole.ball, [0, 0, 1], 0.5)).toBeNull();
});
