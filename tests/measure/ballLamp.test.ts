import { expect, it } from 'vitest';
import { ballLamp } from '../../src/measure/ballLamp';
import { fitBallLamp, fitRoundLamp } from '../../src/measure/lampFit';
import { dot } from '../../src/optics/vector';
import { drawBall } from '../helpers/drawBall';
import { type DrawnLamp, lampAt } from '../helpers/drawnLamp';
import type { DrawnCamera } from '../helpers/drawScene';

const TOWARD_CAMERA = [0, 0, 1] as const;

function read(lamp: DrawnLamp, camera: DrawnCamera) {
  const { crop, ball } = drawBall(lamp, camera);
  return ballLamp(crop, ball, TOWARD_CAMERA)!;
}

const degreesApart = (a: readonly [number, number, number], b: readonly [number, number, number]) =>
  (Math.acos(Math.min(1, dot(a, b))) * 180) / Math.PI;

// The ball is drawn as a perfect mirror of the lamp by tests/helpers/drawScene.ts; the truth is what it was drawn with.
it.each([
  { off: 40, around: 120, size: 12, radiance: 16, blurPx: 0.9 },
  { off: 25, around: -60, size: 8, radiance: 16, blurPx: 0.6 },
  { off: 55, around: 10, size: 18, radiance: 12, blurPx: 1.2 },
  { off: 10, around: 90, size: 10, radiance: 18, blurPx: 1.5 },
  { off: 30, around: 225, size: 25, radiance: 12, blurPx: 0.8 },
])(
  'reads a round lamp of $size° that stands $off° off the camera',
  ({ off, around, size, radiance, blurPx }) => {
    const lamp = lampAt(off, around, size, radiance);
    const reading = read(lamp, { blurPx, grain: 0.01 });
    expect(degreesApart(reading.direction, lamp.direction)).toBeLessThan(1);
    expect(Math.abs(reading.angularDiameterDeg / size - 1)).toBeLessThan(0.05);
    expect(Math.abs(reading.lampRadiance / radiance - 1)).toBeLessThan(0.05);
    expect(Math.abs(reading.blurPx / blurPx - 1)).toBeLessThan(0.25);
    expect(reading.turnRad).toBeNull();
    expect(reading.clippedShare).toBe(0);
  },
);

const lamp = lampAt(40, 120, 12, 16);
const usual = drawBall(lamp, { blurPx: 0.9 });

it('reads half the radiance, and the same lamp, at half the exposure', () => {
  const full = ballLamp(usual.crop, usual.ball, TOWARD_CAMERA)!;
  const half = read(lamp, { blurPx: 0.9, exposure: 0.5 });
  expect(half.lampRadiance / full.lampRadiance).toBeCloseTo(0.5, 2);
  expect(half.angularDiameterDeg / full.angularDiameterDeg).toBeCloseTo(1, 2);
  expect(degreesApart(half.direction, full.direction)).toBeLessThan(0.2);
});

it('says how much of the highlight is at the limit, and still knows where the lamp is', () => {
  const reading = read(lamp, { blurPx: 0.9, exposure: 2.5 });
  expect(reading.clippedShare).toBeGreaterThan(0.5);
  expect(degreesApart(reading.direction, lamp.direction)).toBeLessThan(1);
  expect(reading.color).toEqual([1, 1, 1]);
});

it('takes the color of the lamp from its image', () => {
  const { crop, ball } = usual;
  const tint = [1.2, 1, 0.7];
  const warm = { ...crop, data: crop.data.map((value, i) => value * tint[i % 3]!) };
  const { color } = ballLamp(warm, ball, TOWARD_CAMERA)!;
  expect(color[0] / color[1]).toBeCloseTo(1.2, 1);
  expect(color[2] / color[1]).toBeCloseTo(0.7, 1);
  expect(0.2126 * color[0] + 0.7152 * color[1] + 0.0722 * color[2]).toBeCloseTo(1, 6);
});

it('follows a camera that looks at the ball from the side', () => {
  // Seen along its view every ball is a disc: turning camera and lamp together leaves the picture as it is.
  const { crop, ball } = usual;
  const tilt = (15 * Math.PI) / 180;
  const view = [Math.sin(tilt), 0, Math.cos(tilt)] as const;
  const [x, y, z] = lamp.direction;
  const turned = [
    Math.cos(tilt) * x + Math.sin(tilt) * z,
    y,
    -Math.sin(tilt) * x + Math.cos(tilt) * z,
  ] as const;
  expect(degreesApart(ballLamp(crop, ball, view)!.direction, turned)).toBeLessThan(1);
});

it('reads the same lamp from where a fit in a slightly other circle ended', () => {
  const { crop, ball } = usual;
  const wider = { ...ball, radiusPx: 1.01 * ball.radiusPx };
  const alone = ballLamp(crop, ball, TOWARD_CAMERA)!;
  for (const fitBefore of [fitBallLamp, fitRoundLamp]) {
    const reading = ballLamp(crop, ball, TOWARD_CAMERA, fitBefore(crop, wider, TOWARD_CAMERA)!)!;
    expect(degreesApart(reading.direction, alone.direction)).toBeLessThan(0.02);
    for (const part of ['sourceSlope', 'lampRadiance', 'blurPx'] as const) {
      expect(reading[part] / alone[part]).toBeCloseTo(1, 2);
    }
  }
});

it('reads nothing off a ball without a highlight', () => {
  const { crop, ball } = drawBall(lampAt(40, 120, 12, 0.2), { blurPx: 0.9 });
  expect(ballLamp(crop, ball, TOWARD_CAMERA)).toBeNull();
  expect(ballLamp({ ...crop, data: crop.data.map(() => 0) }, ball, TOWARD_CAMERA)).toBeNull();
});
