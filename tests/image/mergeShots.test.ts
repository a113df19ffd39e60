import { expect, it } from 'vitest';
import { cropLinear } from '../../src/image/cropLinear';
import { luminance } from '../../src/image/luminance';
import { mergeShots } from '../../src/image/mergeShots';
import type { Merging, Photo, Placing } from '../../src/image/photo';
import type { Raster } from '../../src/image/raster';
import { shrinkPhoto } from '../../src/image/shrinkPhoto';
import { SRGB_8BIT_TO_LINEAR } from '../../src/optics/srgbTransfer';
import { shoot } from '../helpers/shoot';

const STILL: Placing = { down: 0, right: 0, turn: 0, grow: 0 };

/** Two stops from left to right over and over, up to four times the bright shot's limit; each row a little redder. */
const SCENE: Raster = {
  width: 24,
  height: 12,
  channels: 3,
  data: Float32Array.from({ length: 3 * 24 * 12 }, (_, i) => {
    const pixel = Math.floor(i / 3);
    const red = i % 3 === 0 ? 1 + 0.01 * Math.floor(pixel / 24) : 1;
    return red * 0.02 * 200 ** ((pixel % 24) / 23) * 0.9;
  }),
};

function mergingWith(shot: Photo, exposure: number, placing = STILL): Merging {
  const shots = [{ rgba: shot.rgba, exposure: [exposure, exposure, exposure] as const, placing }];
  return { linear: SRGB_8BIT_TO_LINEAR, shots, clipLevel: Math.max(1, 1 / exposure) };
}

const whole = { row: 0, column: 0, width: 24, height: 12 };
const bright = shoot(SCENE, 1);
const dark = shoot(SCENE, 0.25);
const merged = mergeShots(bright, mergingWith(dark, 0.25), whole);

it('shows what the bright shot clipped, and everything else as before', () => {
  SCENE.data.forEach((light, i) => {
    expect(Math.abs(merged.data[i]! / light - 1)).toBeLessThan(0.035);
  });
  expect(Math.max(...cropLinear(bright, whole).data)).toBe(1);
  expect(merged.clipLevel).toBe(4);
});

it('shows the same scene in its own unit when the dark shot is at hand', () => {
  const other = mergeShots(dark, mergingWith(bright, 4), whole);
  expect(other.clipLevel).toBe(1);
  other.data.forEach((light, i) => {
    expect(light * 4).toBeCloseTo(merged.data[i]!, 4);
  });
});

it('takes the darkest where all are clipped, and the brightest where all are black', () => {
  const flat = (level: number): Raster => ({
    width: 1,
    height: 1,
    channels: 3,
    data: Float32Array.of(level, level, level),
  });
  const both = (level: number) => {
    const shots = mergingWith(shoot(flat(level), 0.25), 0.25);
    return mergeShots(shoot(flat(level), 1), shots, { row: 0, column: 0, width: 1, height: 1 }).data[0]!;
  };
  expect(both(40)).toBe(4);
  expect(both(0.0004)).toBeCloseTo(SRGB_8BIT_TO_LINEAR[1]!, 9);
});

it('finds its way in a shot that was turned, enlarged and moved', () => {
  const ramp: Raster = {
    width: 60,
    height: 40,
    channels: 3,
    data: Float32Array.from({ length: 3 * 60 * 40 }, (_, i) => {
      const pixel = Math.floor(i / 3);
      return 0.3 + 0.004 * (pixel % 60) + 0.002 * Math.floor(pixel / 60);
    }),
  };
  const placing = { down: 3.4, right: -2.2, turn: 0.01, grow: -0.005 };
  const box = { row: 18, column: 28, width: 3, height: 3 };
  // A bright shot clipped everywhere leaves the word to the other.
  const light = mergeShots(shoot(ramp, 9), mergingWith(shoot(ramp, 1), 1 / 9, placing), box);
  const [r, c] = [19 - 19.5, 29 - 29.5];
  const row = 19 + 3.4 - 0.005 * r + 0.01 * c;
  const column = 29 - 2.2 - 0.005 * c - 0.01 * r;
  expect(light.data[3 * 4]! / 9).toBeCloseTo(0.3 + 0.004 * column + 0.002 * row, 2);
});

it('reduces merged shots as it does their crop, and keeps their limit', () => {
  const photo = { ...bright, merging: mergingWith(dark, 0.25) };
  const { raster, factor } = shrinkPhoto(photo, 12);
  expect([factor, raster.clipLevel]).toEqual([2, 4]);
  const crop = cropLinear(photo, whole);
  const mean = [0, 1, 24, 25].reduce((sum, i) => sum + crop.data[3 * i]! / 4, 0);
  expect(raster.data[0]!).toBeCloseTo(mean, 6);
  expect(luminance(crop).clipLevel).toBe(4);
});
