import { expect, it } from 'vitest';
import type { Raster } from '../../src/image/raster';
import { gaussianBlur } from '../../src/kernels/gaussianBlur';
import { hollowsBetween, reliefBetween } from '../../src/measure/reliefBetween';
import { normalNoise } from '../helpers/normalNoise';

const blur = gaussianBlur;
const SIDE = 60;
const MASK = { width: SIDE, height: SIDE, data: new Uint8Array(SIDE * SIDE).fill(1) };
/** Lamps on the right and on the left: the second lamp went from right to left. */
const WAY = [0.9, 0] as const;
const PIT = { row: 24, column: 33, radius: 4 };

/** Logarithm of Lambert's cosine in a spherical hollow, one lamp less the other, with noise. */
function difference(pit: typeof PIT, sd: number): Raster {
  const noise = normalNoise(7);
  const data = new Float32Array(SIDE * SIDE);
  for (let i = 0; i < data.length; i++) {
    const x = (i % SIDE) - pit.column;
    const far = Math.hypot(Math.floor(i / SIDE) - pit.row, x) / pit.radius;
    // In a hollow the normal leans toward its middle: by −x, up to 20° at the wall.
    const lean = far < 1 ? (-x / pit.radius) * 0.35 : 0;
    const light = (lamp: number) => Math.cos(Math.asin(lamp) - lean);
    data[i] = Math.log(light(0.45) / light(-0.45)) + sd * noise();
  }
  return { width: SIDE, height: SIDE, channels: 1, data };
}

it('sees a hollow where it is, about as large as it is', () => {
  const [hollow, next] = hollowsBetween(difference(PIT, 0.04), MASK, WAY, 1 / 6, blur, {
    swing: 0.03,
    tValue: 4,
  });
  expect(Math.hypot(hollow!.row - PIT.row, hollow!.column - PIT.column)).toBeLessThan(1.5);
  expect(hollow!.radius / PIT.radius).toBeGreaterThan(0.7);
  expect(hollow!.radius / PIT.radius).toBeLessThan(1.4);
  expect(hollow!.tValue).toBeGreaterThan(3 * (next?.tValue ?? 0));
});

it('takes a bump for the opposite of a hollow', () => {
  const bump = difference(PIT, 0.02);
  for (let i = 0; i < bump.data.length; i++) bump.data[i]! *= -1;
  expect(reliefBetween(bump, MASK, WAY)(PIT.row, PIT.column, PIT.radius)!.tValue).toBeLessThan(-7);
});

it('sees nothing in noise, and does not answer where nothing is seen', () => {
  const blank = difference({ ...PIT, radius: 1e-6 }, 0.05);
  expect(hollowsBetween(blank, MASK, WAY, 1 / 6, blur, { swing: 0.08, tValue: 7 })).toEqual([]);
  blank.data.fill(Number.NaN);
  expect(reliefBetween(blank, MASK, WAY)(PIT.row, PIT.column, PIT.radius)).toBeNull();
});
