import { expect, it } from 'vitest';
import type { Mask, Raster } from '../../src/image/raster';
import { shadowBeside, thicknessOf } from '../../src/measure/shadowBeside';

const SIZE = 240;
const MIDDLE = 120;
type Shape = (row: number, column: number) => boolean;

const draw = (isIn: Shape): Float32Array =>
  Float32Array.from({ length: SIZE * SIZE }, (_, i) => (isIn(Math.floor(i / SIZE), i % SIZE) ? 1 : 0));
const rasterOf = (data: Float32Array): Raster => ({ width: SIZE, height: SIZE, channels: 1, data });
const maskOf = (data: Float32Array): Mask => ({ width: SIZE, height: SIZE, data: Uint8Array.from(data) });

/** An ellipsoid of half axes a, a, c on the tray, its shadow thrown along `turn` by a lamp at the tangent t. */
function ellipsoid(a: number, c: number, t: number, turn: number) {
  const outline = Array.from({ length: 90 }, (_, k): [number, number] => {
    const angle = (k * Math.PI) / 45;
    return [MIDDLE + a * Math.sin(angle), MIDDLE + a * Math.cos(angle)];
  });
  // The shadow on the tray is an ellipse of half axes √(a² + c²t²) and a, its middle c t away.
  const shadow = draw((row, column) => {
    const [y, x] = [row - MIDDLE, column - MIDDLE];
    const along = x * Math.cos(turn) + y * Math.sin(turn) - c * t;
    const across = y * Math.cos(turn) - x * Math.sin(turn);
    return along ** 2 / (a ** 2 + (c * t) ** 2) + (across / a) ** 2 <= 1;
  });
  const taken = draw((row, column) => Math.hypot(row - MIDDLE, column - MIDDLE) <= a);
  // Toward the lamp: x right, y up.
  const lampSide = [-Math.cos(turn), Math.sin(turn)] as const;
  return { outline, darkness: rasterOf(shadow), taken: maskOf(taken), lampSide };
}

it.each([
  [40, 40, 0.6, 0],
  [40, 30, 0.6, 1.2],
  [50, 20, 1, 2.5],
  [45, 25, 0.8, -2],
])('reads the thickness of an ellipsoid, half axes %f and %f, from its shadow', (a, c, t, turn) => {
  const { outline, darkness, taken, lampSide } = ellipsoid(a, c, t, turn);
  const shadow = shadowBeside(darkness, outline, lampSide, taken);
  // Within two pixels of reach; away from the middle line the shadow is a little shorter.
  expect(Math.abs(thicknessOf(shadow!, t) / (2 * c) - 1)).toBeLessThan(0.15);
});

it('reads none where there is none', () => {
  const { outline, taken, lampSide } = ellipsoid(40, 30, 0.6, 1);
  const lit = rasterOf(draw(() => false));
  expect(shadowBeside(lit, outline, lampSide, taken)).toMatchObject({ reachPx: 0 });
});

it('reads no end where all around is as dark', () => {
  const { outline, taken, lampSide } = ellipsoid(30, 30, 0.6, 1);
  const dark = rasterOf(draw(() => true));
  expect(thicknessOf(shadowBeside(dark, outline, lampSide, taken)!, 0.6)).toBe(Number.POSITIVE_INFINITY);
});

it('says nothing where a neighbor hides where the shadow ends', () => {
  const { outline, darkness, lampSide, taken } = ellipsoid(40, 40, 0.8, 0);
  const neighbor = draw((row, column) => column > MIDDLE + 42 || taken.data[row * SIZE + column] === 1);
  expect(shadowBeside(darkness, outline, lampSide, maskOf(neighbor))).toBeNull();
});
