import { expect, it } from 'vitest';
import type { Raster } from '../../src/image/raster';
import { fitPlacing, type PlacedPatch } from '../../src/measure/fitPlacing';
import { lightSlopes } from '../../src/measure/lightSlopes';
import { patchShift } from '../../src/measure/patchShift';
import { pictureShift } from '../../src/measure/pictureShift';
import { texturedPlaces } from '../../src/measure/texturedPlaces';

/** Waves of several directions, as they lie after a shift; brighter by a factor. */
function waves(width: number, height: number, down = 0, right = 0, gain = 1, channels: 1 | 3 = 1): Raster {
  const data = Float32Array.from({ length: channels * width * height }, (_, i) => {
    const row = Math.floor(i / channels / width) - down;
    const column = (Math.floor(i / channels) % width) - right;
    const swing = Math.sin(0.31 * row + 0.11 * column) + Math.sin(0.23 * column - 0.17 * row + 1);
    return gain * 0.1 * Math.exp(0.4 * swing + 0.3 * Math.sin(0.05 * row * Math.cos(0.02 * column)));
  });
  return { width, height, channels, data };
}

it('finds a patch again to a hundredth of a pixel at another exposure', () => {
  const moved = waves(52, 52, 6 + 1.37, 6 - 2.61, 0.3);
  const shift = patchShift(waves(40, 40), moved, 6);
  expect(shift!.down).toBeCloseTo(1.37, 1);
  expect(shift!.right).toBeCloseTo(-2.61, 1);
});

it('says nothing of a patch without texture, nor of one with stripes only', () => {
  const even = { width: 20, height: 20, channels: 1, data: new Float32Array(400).fill(0.2) } as const;
  const stripes = (side: number): Raster => ({
    width: side,
    height: side,
    channels: 1,
    data: Float32Array.from({ length: side * side }, (_, i) => 0.2 + 0.1 * Math.sin(0.6 * (i % side))),
  });
  const wide = { ...even, width: 32, height: 32, data: new Float32Array(1024).fill(0.2) };
  expect(patchShift(even, wide, 6)).toBeNull();
  expect(patchShift(stripes(20), stripes(32), 6)).toBeNull();
});

it('finds the shift of a whole picture, and little likeness in another one', () => {
  const here = lightSlopes(waves(80, 60, 0, 0, 1, 3));
  const there = lightSlopes(waves(80, 60, 3, -2, 0.4, 3));
  const shift = pictureShift(here, there, { down: 0, right: 0 }, 5);
  expect([Math.round(shift.down), Math.round(shift.right)]).toEqual([3, -2]);
  expect(shift.likeness).toBeGreaterThan(0.98);
  const { data, ...mirrored } = waves(80, 60, 0, 0, 1, 3);
  const upsideDown = data.map((_, i) => data[3 * 80 * (59 - Math.floor(i / 240)) + (i % 240)]!);
  const strange = lightSlopes({ ...mirrored, data: upsideDown });
  expect(pictureShift(here, strange, { down: 0, right: 0 }, 5).likeness).toBeLessThan(0.6);
});

it('has no slopes where light is too little or at the limit', () => {
  const dark = lightSlopes(waves(12, 12, 0, 0, 0.01, 3));
  const bright = lightSlopes(waves(12, 12, 0, 0, 20, 3));
  expect([...dark.down, ...bright.right].every(Number.isNaN)).toBe(true);
});

const PATCHES: PlacedPatch[] = [-400, -150, 100, 300].flatMap((row) =>
  [-500, 0, 450].map((column) => ({
    row,
    column,
    down: 5 + 0.002 * row - 0.004 * column,
    right: -3 + 0.002 * column + 0.004 * row,
  })),
);

it('finds shift, turn and scale, and leaves out what was moved by hand', () => {
  const strays = PATCHES.map((patch, i) => (i < 2 ? { ...patch, down: patch.down + 8 } : patch));
  const { placing, agreeing } = fitPlacing(strays);
  expect(placing.down).toBeCloseTo(5, 2);
  expect(placing.right).toBeCloseTo(-3, 2);
  expect(placing.turn).toBeCloseTo(-0.004, 4);
  expect(placing.grow).toBeCloseTo(0.002, 4);
  expect(agreeing).toBeCloseTo(10 / 12, 9);
});

it('takes few patches for a shift only', () => {
  const { placing } = fitPlacing(PATCHES.slice(3, 6).map((patch) => ({ ...patch, down: 2, right: 1 })));
  expect(placing).toMatchObject({ turn: 0, grow: 0 });
  expect([placing.down, placing.right].map((px) => Number(px.toFixed(9)))).toEqual([2, 1]);
});

it('looks for places where there is something to see', () => {
  const picture = waves(140, 100, 0, 0, 1, 3);
  for (let i = 0; i < picture.data.length; i++) if (Math.floor(i / 3) % 140 >= 70) picture.data[i] = 0.2;
  const places = texturedPlaces(lightSlopes(picture), 8);
  expect(places.length).toBeGreaterThan(12);
  expect(places.every(({ column }) => column < 76)).toBe(true);
});
