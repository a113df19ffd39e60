import { expect, it } from 'vitest';
import { readBall } from '../../src/analysis/readBall';
import { shrinkPhoto } from '../../src/image/shrinkPhoto';
import { drawTray, TRAY_BALL, TRAY_PX_PER_MM, TRAY_STONES } from '../helpers/drawTray';

const photo = drawTray([TRAY_BALL]);
const small = shrinkPhoto(photo, 900);
const radiusPx = TRAY_BALL.halfAxes[0] * TRAY_PX_PER_MM;
const truth = {
  row: photo.heightPx / 2 - 0.5 - TRAY_BALL.center[1] * TRAY_PX_PER_MM,
  column: photo.widthPx / 2 - 0.5 + TRAY_BALL.center[0] * TRAY_PX_PER_MM,
};

it('finds the ball by itself, in size to a hundredth and in place to a sixtieth of its radius', () => {
  const { ball } = readBall(photo, small, null)!;
  expect(Math.hypot(ball.row - truth.row, ball.column - truth.column)).toBeLessThan(radiusPx / 60);
  expect(Math.abs(ball.radiusPx / radiusPx - 1)).toBeLessThan(0.01);
});

it('finds the same ball in a picture reduced before it is searched', () => {
  const whole = readBall(photo, small, null)!.ball;
  const reduced = readBall(photo, shrinkPhoto(photo, 330), null)!.ball;
  expect(Math.abs(reduced.radiusPx - whole.radiusPx)).toBeLessThan(0.3);
  expect(Math.hypot(reduced.row - whole.row, reduced.column - whole.column)).toBeLessThan(0.3);
});

it('takes a pointing finger anywhere on the ball, and none beside it', () => {
  const pointed = readBall(photo, small, [truth.row - 30, truth.column + 25])!.ball;
  expect(Math.abs(pointed.radiusPx / radiusPx - 1)).toBeLessThan(0.01);
  expect(readBall(photo, small, [truth.row - 200, truth.column + 300])).toBeNull();
});

it('finds the ball in a photo taken so bright that a polished stone has more clipped pixels than the ball', () => {
  const bright = drawTray([TRAY_BALL, TRAY_STONES[0]!], { blurPx: 0.9, exposure: 3 });
  const { ball, lamp } = readBall(bright, shrinkPhoto(bright, 900), null)!;
  expect(Math.abs(ball.radiusPx / radiusPx - 1)).toBeLessThan(0.02);
  expect(lamp.clippedShare).toBeGreaterThan(0.5);
});

it('finds nothing in an empty tray', () => {
  const empty = drawTray([]);
  expect(readBall(empty, shrinkPhoto(empty, 900), null)).toBeNull();
});
