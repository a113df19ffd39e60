import { expect, it } from 'vitest';
import { luminance } from '../../src/image/luminance';
import type { Raster } from '../../src/image/raster';
import { ballRim } from '../../src/measure/ballRim';
import { ballCandidates, bestBalls } from '../../src/measure/findBall';
import { type DrawnBody, plain } from '../helpers/drawScene';
import { TRAY_BALL, TRAY_STONES } from '../helpers/drawTray';
import { lit, mirrored, trayPicture } from '../helpers/trayPicture';

const { small, ball } = trayPicture([TRAY_BALL, ...TRAY_STONES]);
const light = luminance(small);
const findBall = (picture: Raster, near: { row: number; column: number } | null) =>
  bestBalls([...ballCandidates(picture, near)]);
const apart = (a: { row: number; column: number }, b: { row: number; column: number }) =>
  Math.hypot(a.row - b.row, a.column - b.column);

it('puts the ball first, near its true place and size', () => {
  const [best] = findBall(light, null);
  expect(apart(best!, ball)).toBeLessThan(0.12 * ball.radiusPx);
  expect(Math.abs(best!.radiusPx / ball.radiusPx - 1)).toBeLessThan(0.12);
});

it('comes upon it at its first spot, which saves the search of the others', () => {
  const first = ballCandidates(light, null).next().value!;
  expect(apart(first, ball)).toBeLessThan(0.12 * ball.radiusPx);
  expect(first.score).toBeGreaterThan(0.85);
});

it('finds it at half and at twice the light, and in the mirror image', () => {
  for (const factor of [0.5, 2]) {
    expect(apart(findBall(luminance(lit(small, [factor, factor, factor])), null)[0]!, ball)).toBeLessThan(8);
  }
  const [swapped] = findBall(mirrored(light), null);
  expect(apart(swapped!, { row: ball.row, column: small.width - 1 - ball.column })).toBeLessThan(8);
});

it('looks only around the place that a person points at', () => {
  for (const found of findBall(light, { row: ball.row + 20, column: ball.column })) {
    expect(apart(found, { row: ball.row + 20, column: ball.column })).toBeLessThanOrEqual(found.radiusPx);
  }
});

it('takes no polished black stone for the ball', () => {
  const black: DrawnBody = { ...TRAY_STONES[0]!, alpha: 0.01, colorAt: plain(0.02) };
  const [best] = findBall(luminance(trayPicture([TRAY_BALL, black]).small), null);
  expect(apart(best!, ball)).toBeLessThan(8);
});

it('finds nothing in an empty tray', () => {
  expect(findBall(luminance(trayPicture([]).small), null)).toEqual([]);
});

it('draws the rim to a hundredth of the radius from a start that is off', () => {
  const rim = ballRim(light, { row: ball.row + 3, column: ball.column - 2, radiusPx: 1.06 * ball.radiusPx })!;
  expect(Math.abs(rim.radiusPx / ball.radiusPx - 1)).toBeLessThan(0.015);
  expect(apart(rim, ball)).toBeLessThan(0.03 * ball.radiusPx);
  expect(rim.onCircle).toBeGreaterThan(0.4);
});

it('sees no rim on an even picture', () => {
  const even = { width: 60, height: 60, channels: 1, data: new Float32Array(3600).fill(0.2) } as const;
  expect(ballRim(even, { row: 30, column: 30, radiusPx: 15 })).toBeNull();
});
