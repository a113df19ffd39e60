import { expect, it } from 'vitest';
import type { Mask, Raster } from '../../src/image/raster';
import { shadowCast } from '../../src/measure/shadowCast';

const SIDE = 220;
const STONES = [
  { row: 60, column: 60, radius: 22 },
  { row: 150, column: 80, radius: 18 },
  { row: 90, column: 155, radius: 25 },
];
const near = (row: number, column: number) =>
  STONES.some((stone) => Math.hypot(row - stone.row, column - stone.column) <= stone.radius);
const picture = (at: (row: number, column: number) => number) =>
  Float32Array.from({ length: SIDE * SIDE }, (_, i) => at(Math.floor(i / SIDE), i % SIDE));

const stones: Mask = {
  width: SIDE,
  height: SIDE,
  data: Uint8Array.from(picture((r, c) => (near(r, c) ? 1 : 0))),
};

/** Full shadow that reaches so many pixels past the stones. */
function drawShadow(turnDeg: number, reachPx: number, depth = 1): Raster {
  const [right, up] = [Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)];
  const data = picture((row, column) => {
    for (let step = 1; step <= reachPx; step++)
      if (near(row + step * up, column - step * right)) return depth;
    return 0;
  });
  return { width: SIDE, height: SIDE, channels: 1, data };
}

const MEAN_RADIUS = Math.sqrt((22 ** 2 + 18 ** 2 + 25 ** 2) / 3);

it('finds direction and reach of drawn shadows', () => {
  for (const turnDeg of [-135, 10, 97]) {
    const found = shadowCast(drawShadow(turnDeg, 14), stones, STONES.length)!;
    const off = (found.turnRad * 180) / Math.PI - turnDeg;
    expect(Math.abs(((off + 540) % 360) - 180)).toBeLessThan(3);
    expect(Math.abs(found.reach / (14 / MEAN_RADIUS) - 1)).toBeLessThan(0.25);
    expect(found.likeness).toBeGreaterThan(0.9);
  }
});

it('does not mind how dark the shadows are, nor darkness that is no shadow', () => {
  const faint = shadowCast(drawShadow(40, 12, 0.3), stones, STONES.length)!;
  const full = shadowCast(drawShadow(40, 12), stones, STONES.length)!;
  expect(faint.turnRad).toBeCloseTo(full.turnRad, 6);
  const grain = drawShadow(40, 12);
  grain.data.forEach((value, i) => {
    grain.data[i] = value + 0.3 * Math.sin(12.9898 * i) ** 2;
  });
  expect(Math.abs(shadowCast(grain, stones, STONES.length)!.turnRad - full.turnRad)).toBeLessThan(0.05);
});

it('finds none on an evenly lit tray, and none without stones', () => {
  expect(shadowCast(drawShadow(0, 0), stones, STONES.length)).toBeNull();
  const none = { ...stones, data: new Uint8Array(SIDE * SIDE) };
  expect(shadowCast(drawShadow(40, 12), none, 1)).toBeNull();
});
