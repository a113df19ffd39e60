import { expect, it } from 'vitest';
import type { Mask, Raster } from '../../src/image/raster';
import { blurGaussian } from '../../src/measure/blurGaussian';
import { stoneLook } from '../../src/measure/stoneLook';
import { cielab } from '../../src/optics/cielab';

const SIZE = 80;
const blur = (raster: Raster, sigmaPx: number): Raster => {
  const values = Float64Array.from(raster.data);
  blurGaussian(values, raster.width, raster.height, sigmaPx);
  return { ...raster, data: Float32Array.from(values) };
};
const mask: Mask = {
  width: SIZE,
  height: SIZE,
  data: Uint8Array.from({ length: SIZE * SIZE }, (_, i) =>
    Math.hypot(Math.floor(i / SIZE) - 39.5, (i % SIZE) - 39.5) < 34 ? 1 : 0,
  ),
};
const form = { silhouette: [1, 1, 1], size: [17, 17, 227] } as const;

function stoneOf(color: (row: number, column: number) => readonly [number, number, number]): Raster {
  const data = new Float32Array(3 * SIZE * SIZE);
  for (let i = 0; i < SIZE * SIZE; i++) data.set(color(Math.floor(i / SIZE), i % SIZE), 3 * i);
  return { width: SIZE, height: SIZE, channels: 3, data };
}
const lookOf = (stone: Raster, white = 0.5) => stoneLook(stone, mask, 0.25, white, form, blur);

it('gives an even stone the color that it has as a share of white', () => {
  const { colors } = lookOf(stoneOf(() => [0.2, 0.1, 0.05]));
  const [lightness, a, b] = cielab([0.4, 0.2, 0.1]);
  [lightness, a, b].forEach((value, k) => {
    for (const found of colors.slice(5 * k, 5 * k + 5)) expect(found).toBeCloseTo(value, 2);
  });
});

it('does not mind how bright the photo is', () => {
  const dark = lookOf(
    stoneOf((row) => [0.1 + 0.002 * row, 0.1, 0.06]),
    0.4,
  );
  const light = lookOf(
    stoneOf((row) => [0.2 + 0.004 * row, 0.2, 0.12]),
    0.8,
  );
  dark.colors.forEach((value, k) => {
    expect(light.colors[k]).toBeCloseTo(value, 2);
  });
  dark.pattern.forEach((value, k) => {
    expect(light.pattern[k]).toBeCloseTo(value, 2);
  });
});

it('does not mind a quarter turn, and sees finer and coarser pattern in bands of their own', () => {
  const stripes = (period: number, isTurned = false) =>
    lookOf(
      stoneOf((row, column) => {
        const level = 0.2 + 0.05 * Math.sin((2 * Math.PI * (isTurned ? column : row)) / period);
        return [level, level, level];
      }),
    );
  const [fine, turned, coarse] = [stripes(5), stripes(5, true), stripes(24)];
  fine.pattern.forEach((value, k) => {
    expect(turned.pattern[k]).toBeCloseTo(value, 2);
  });
  const strongest = (pattern: readonly number[]) => pattern.indexOf(Math.max(...pattern.slice(0, 4)));
  expect(strongest(fine.pattern)).toBeLessThan(strongest(coarse.pattern));
});
