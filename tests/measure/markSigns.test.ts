import { expect, it } from 'vitest';
import type { Raster } from '../../src/image/raster';
import { markSigns } from '../../src/measure/markSigns';
import { normalNoise } from '../helpers/normalNoise';

const SIDE = 40;
const LAMP = [0.6, 0] as const;
const blank = (value: (x: number, y: number) => number): Raster => ({
  width: SIDE,
  height: SIDE,
  channels: 1,
  // x right and y up from the middle, places.
  data: Float32Array.from({ length: SIDE * SIDE }, (_, i) =>
    value((i % SIDE) - 20, 20 - Math.floor(i / SIDE)),
  ),
});
const mask = { width: SIDE, height: SIDE, data: new Uint8Array(SIDE * SIDE).fill(1) };
const inside = (x: number, y: number) => Math.hypot(x, y) < 4.5;
const places = Array.from({ length: SIDE * SIDE }, (_, i) => i).filter((i) =>
  inside((i % SIDE) - 20, 20 - Math.floor(i / SIDE)),
);
const mark = { places, values: places.map(() => 0.8), peak: 0.8 };
const noise = normalNoise(3);
const grain = blank(() => 0.05 * noise());
const gray: readonly [Raster, Raster] = [grain, grain];

it('sees a hollow rise away from the lamp and not across it', () => {
  // The lamp stands on the right: a hollow's right wall is dark, its left wall bright.
  const logs = blank((x, y) => (inside(x, y) ? -0.05 * x : 0));
  const { along, across, contrast } = markSigns(mark, { logs, hues: gray, mask }, LAMP);
  expect(along).toBeGreaterThan(0.05);
  expect(Math.abs(across)).toBeLessThan(0.01);
  expect(Math.abs(contrast)).toBeLessThan(0.02);
  expect(markSigns(mark, { logs, hues: gray, mask }, [-0.6, 0]).along).toBeLessThan(-0.05);
});

it('sees a speck by its contrast and its color', () => {
  const logs = blank((x, y) => (inside(x, y) ? -1.5 : 0) + 0.05 * noise());
  const red = blank((x, y) => (inside(x, y) ? 0.5 : 0) + 0.05 * noise());
  const { contrast, colorStep, ringNoise } = markSigns(mark, { logs, hues: [red, grain], mask }, LAMP);
  expect(contrast).toBeCloseTo(-1.5, 1);
  expect(ringNoise).toBeGreaterThan(0.04);
  expect(ringNoise).toBeLessThan(0.06);
  expect(colorStep).toBeGreaterThan(3);
});

it('tells round from long, and sharp from soft', () => {
  const light = { logs: grain, hues: gray, mask };
  const line = { ...mark, places: Array.from({ length: 12 }, (_, i) => 20 * SIDE + 14 + i) };
  expect(markSigns(mark, light, LAMP).aspect).toBeLessThan(1.1);
  expect(markSigns({ ...line, values: line.places.map(() => 0.8) }, light, LAMP).aspect).toBeGreaterThan(8);
  const soft = { ...mark, values: places.map((_, i) => (i % 2 ? 0.8 : 0.2)) };
  expect(markSigns(soft, light, LAMP).sharpness).toBeCloseTo(0.5, 1);
});

it('says nothing of the lamp when nobody knows it', () => {
  const logs = blank((x) => 0.1 * x);
  expect(markSigns(mark, { logs, hues: gray, mask }, [0, 0])).toMatchObject({ along: 0, across: 0 });
});
