import { expect, it } from 'vitest';
import type { Raster } from '../../src/image/raster';
import { ballFace } from '../../src/measure/ballFace';
import { ballLamp } from '../../src/measure/ballLamp';
import { secondLights } from '../../src/measure/secondLights';
import { dot } from '../../src/optics/vector';
import { drawBall } from '../helpers/drawBall';
import { type DrawnLamp, lampAt } from '../helpers/drawnLamp';

const CAMERA = { blurPx: 0.6, exposure: 0.9 };
const LAMP = lampAt(35, 100, 10, 16);
const alone = drawBall(LAMP, CAMERA);

/** The ball under the lamp and under another: light adds up. */
function withSecond(other: DrawnLamp): Raster {
  const second = drawBall(other, CAMERA).crop.data;
  const room = drawBall({ ...other, radiance: 0 }, CAMERA).crop.data;
  return {
    ...alone.crop,
    data: alone.crop.data.map((value, i) => Math.min(1, value + second[i]! - room[i]!)),
  };
}

function lightsIn(crop: Raster) {
  const lamp = ballLamp(crop, alone.ball, [0, 0, 1])!;
  return secondLights(ballFace(crop, alone.ball)!, alone.ball, lamp, [0, 0, 1]);
}

it('finds none beside a lone lamp, the mirrored tray and the room', () => {
  expect(lightsIn(alone.crop)).toEqual([]);
});

it('finds a second source, its direction within 1.5° and its brightness within a fifth', () => {
  for (const [offDeg, aroundDeg, share] of [
    [20, -40, 0.8],
    [50, -120, 0.3],
    [62, 30, 0.15],
  ] as const) {
    const other = lampAt(offDeg, aroundDeg, 12, share * 16);
    const lights = lightsIn(withSecond(other));
    expect(lights).toHaveLength(1);
    expect((Math.acos(Math.min(1, dot(lights[0]!.direction, other.direction))) * 180) / Math.PI).toBeLessThan(
      1.5,
    );
    expect(Math.abs(lights[0]!.share / share - 1)).toBeLessThan(0.2);
  }
});

it('finds both of two windows, the brighter first', () => {
  const first = withSecond(lampAt(40, -30, 14, 5));
  const second = drawBall(lampAt(55, 190, 14, 3), CAMERA).crop.data;
  const room = drawBall({ ...LAMP, radiance: 0 }, CAMERA).crop.data;
  const both = { ...first, data: first.data.map((value, i) => value + second[i]! - room[i]!) };
  const shares = lightsIn(both).map(({ share }) => share);
  expect(shares).toHaveLength(2);
  expect(shares[0]).toBeGreaterThan(shares[1]!);
});

it('finds the same under half the exposure', () => {
  const crop = withSecond(lampAt(50, -120, 12, 5));
  const half = { ...crop, data: crop.data.map((value) => 0.5 * value) };
  expect(lightsIn(half)[0]!.share).toBeCloseTo(lightsIn(crop)[0]!.share, 1);
});
