import { expect, it } from 'vitest';
import { maskWhere } from '../../src/image/maskWhere';
import type { Raster } from '../../src/image/raster';
import { ballShadow, USUAL_SHADOW } from '../../src/measure/ballShadow';
import { edgeRelief, grainEdge } from '../../src/measure/edgeRelief';
import { lampLines, shadowShare } from '../../src/measure/lampLines';
import { lampSideSeeds } from '../../src/measure/lampSideSeeds';
import { localThickness } from '../../src/measure/localThickness';
import { photoShadow } from '../../src/measure/photoShadow';
import { shadowSeeds } from '../../src/measure/shadowSeeds';
import { stoneSeeds } from '../../src/measure/stoneSeeds';
import { textureSeeds } from '../../src/measure/textureSeeds';
import { trayDifference } from '../../src/measure/trayDifference';
import { surfaceAt, trayModel } from '../../src/measure/trayModel';
import { distanceToEdge } from '../../src/vision/distanceToEdge';
import { openOpenCv } from '../../src/vision/openCv';
import { normalNoise } from '../helpers/normalNoise';
import { lit } from '../helpers/trayPicture';

const cv = await openOpenCv();
const SIZE = { width: 240, height: 160 };
/** The lamp stands to the right; a colored stone at column 130, its shadow to the left, a gray ball far off. */
const LAMP_SIDE = [1, 0] as const;
const inStone = (row: number, column: number) => Math.hypot(row - 80, column - 130) < 30;
const inShadow = (row: number, column: number) =>
  !inStone(row, column) && Math.hypot(row - 80, column - 105) < 30;
const at = (row: number, column: number) => row * SIZE.width + column;

/** A tray that darkens to the left, with grain. */
function drawn(stone: readonly [number, number, number]): Raster {
  const noise = normalNoise(5);
  const data = new Float32Array(3 * SIZE.width * SIZE.height);
  for (let i = 0; i < SIZE.width * SIZE.height; i++) {
    const [row, column] = [Math.floor(i / SIZE.width), i % SIZE.width];
    const light = 0.3 * Math.exp(0.4 * (column / SIZE.width - 0.5)) * (1 + 0.01 * noise());
    const paint = inStone(row, column) ? stone : inShadow(row, column) ? [0.3, 0.3, 0.3] : [1, 1, 1];
    for (let c = 0; c < 3; c++) data[3 * i + c] = light * paint[c]!;
  }
  return { ...SIZE, channels: 3, data };
}

const red = drawn([1.2, 0.4, 0.2]);
const tray = trayModel(red);
const difference = trayDifference(red, tray);
const edges = edgeRelief(difference);
const area = maskWhere(SIZE.width, SIZE.height, (i) => {
  const [row, column] = [Math.floor(i / SIZE.width), i % SIZE.width];
  return inStone(row, column) || inShadow(row, column);
});
const lines = lampLines(area, LAMP_SIDE);
const shadow = photoShadow(difference, lines);
const depth = distanceToEdge(cv, area);

it('follows the fall of light over the tray, past stone and shadow', () => {
  const [light] = tray.surfaces;
  expect(surfaceAt(light, 0.4, 0) - surfaceAt(light, -0.4, 0)).toBeCloseTo(0.32, 1);
  expect(Math.abs(difference.lightness[at(20, 20)]!)).toBeLessThan(0.06);
  expect(tray.lightnessSd).toBeLessThan(0.02);
});

it('sees the same departures at twice the light and under a colored lamp', () => {
  const other = lit(red, [2, 1.5, 1.2]);
  const again = trayDifference(other, trayModel(other));
  for (const [row, column] of [
    [80, 130],
    [80, 85],
    [30, 40],
  ] as const) {
    expect(Math.abs(again.lightness[at(row, column)]! - difference.lightness[at(row, column)]!)).toBeLessThan(
      0.08,
    );
    expect(Math.abs(again.redGreen[at(row, column)]! - difference.redGreen[at(row, column)]!)).toBeLessThan(
      0.08,
    );
  }
});

it('takes the tray from the corners when a stone fills the middle of every side', () => {
  const big = lit(red, [1, 1, 1]);
  big.data.forEach((_, k) => {
    const i = Math.floor(k / 3);
    const [y, x] = [Math.floor(i / SIZE.width) / SIZE.height - 0.5, (i % SIZE.width) / SIZE.width - 0.5];
    const wavy = 0.04 * (1 + Math.floor(7 * (x + 0.5)));
    if (Math.abs(x) + Math.abs(y) < 0.72) big.data[k] = wavy * [2, 1, 0.4][k % 3]!;
  });
  const corner = trayDifference(big, trayModel(big));
  for (const [row, column] of [
    [3, 3],
    [3, 236],
    [156, 3],
    [156, 236],
  ] as const) {
    expect(Math.abs(corner.lightness[at(row, column)]!)).toBeLessThan(0.15);
  }
});

it('reads how dark the shadow is at its far end', () => {
  expect(Math.abs(shadow.depth - Math.log(0.3))).toBeLessThan(0.1);
  expect(shadow.isRead).toBe(false);
});

it('reads it beside the ball when there is one, and takes the usual shadow where none is dark', () => {
  const beside = ballShadow(difference, { row: 80, column: 130, radiusPx: 30 }, null);
  expect(Math.abs(beside.depth - Math.log(0.3))).toBeLessThan(0.1);
  expect(beside.isRead).toBe(true);
  expect(ballShadow(difference, { row: 30, column: 200, radiusPx: 12 }, null)).toBe(USUAL_SHADOW);
  const none = lampLines({ ...area, data: area.data.map(() => 0) }, LAMP_SIDE);
  expect(photoShadow(difference, none)).toBe(USUAL_SHADOW);
});

it('seeds a colored stone and the bare tray, and leaves the shadow open', () => {
  const seeds = stoneSeeds(difference, edges, shadow);
  expect(seeds.stone.data[at(80, 130)]).toBe(1);
  expect(seeds.tray.data[at(80, 130)]).toBe(0);
  expect([seeds.stone.data[at(80, 85)], seeds.tray.data[at(80, 85)]]).toEqual([0, 0]);
  const bare = maskWhere(SIZE.width, SIZE.height, (i) => !area.data[i] && edges.data[i]! < 0.05);
  const seeded = seeds.tray.data.filter((tray, i) => tray && bare.data[i]).length;
  expect(seeded / bare.data.filter(Boolean).length).toBeGreaterThan(0.8);
  seeds.stone.data.forEach((stone, i) => {
    expect(stone & seeds.tray.data[i]!).toBe(0);
  });
});

it('counts lines along the light from both ends', () => {
  const row = maskWhere(9, 3, (i) => i >= 11 && i <= 15);
  const { towardLamp, awayFromLamp } = lampLines(row, [1, 0]);
  expect([...towardLamp.subarray(9, 18)]).toEqual([0, 0, 5, 4, 3, 2, 1, 0, 0]);
  expect([...awayFromLamp.subarray(9, 18)]).toEqual([0, 0, 1, 2, 3, 4, 5, 0, 0]);
});

it('follows slanted lines to their length', () => {
  const square = maskWhere(41, 41, (i) => i % 41 >= 5 && i % 41 < 36 && i >= 5 * 41 && i < 36 * 41);
  const { towardLamp, awayFromLamp } = lampLines(square, [Math.SQRT1_2, Math.SQRT1_2]);
  const middle = 20 * 41 + 20;
  expect(Math.abs(towardLamp[middle]! + awayFromLamp[middle]! - 31 * Math.SQRT2)).toBeLessThan(4);
});

it("knows the shadow's share of a line from the ball, within what is believed", () => {
  const ball = { row: 80, column: 130, radiusPx: 30 };
  expect(Math.abs(shadowShare(lines, ball, SIZE.width) - 25 / 85)).toBeLessThan(0.04);
  expect(shadowShare(lines, { ...ball, radiusPx: 5 }, SIZE.width)).toBe(0.45);
  expect(shadowShare(lines, null, SIZE.width)).toBe(0.3);
});

it('seeds a stone as gray as the tray by its place toward the lamp', () => {
  const gray = trayDifference(drawn([1.02, 1.02, 1.02]), tray);
  const seeds = lampSideSeeds(lines, depth, gray, edgeRelief(gray), { ...shadow, isRead: true }, 0.3);
  expect(seeds.stone.data[at(80, 135)]).toBe(1);
  expect(seeds.shade.data[at(80, 80)]).toBe(1);
  seeds.stone.data.forEach((stone, i) => {
    const [row, column] = [Math.floor(i / SIZE.width), i % SIZE.width];
    if (stone) expect(inStone(row, column)).toBe(true);
    if (seeds.shade.data[i]) expect(inShadow(row, column)).toBe(true);
  });
});

it('seeds full shadow as tray, and no stone', () => {
  const seeds = stoneSeeds(difference, edges, shadow);
  const shade = shadowSeeds(difference, edges, shadow, seeds, LAMP_SIDE, lines, 0.3);
  expect(shade.data[at(80, 82)]).toBe(1);
  shade.data.forEach((dark, i) => {
    if (dark) expect(inStone(Math.floor(i / SIZE.width), i % SIZE.width)).toBe(false);
  });
});

it('seeds pattern, and neither an outline nor plain ground', () => {
  const noise = normalNoise(9);
  const flecked = lit(red, [1, 1, 1]);
  for (let i = 0; i < area.data.length; i++) {
    const [row, column] = [Math.floor(i / SIZE.width), i % SIZE.width];
    if (!inStone(row, column)) continue;
    const fleck = (row >> 1) % 2 === (column >> 1) % 2 ? 0.2 : 0.4;
    for (let c = 0; c < 3; c++) flecked.data[3 * i + c] = fleck * (1 + 0.01 * noise());
  }
  const fine = trayDifference(flecked, tray);
  const smooth = trayDifference(blurred(flecked), tray);
  const seeds = textureSeeds(fine, smooth, depth);
  expect(seeds.data[at(80, 130)]).toBe(1);
  seeds.data.forEach((pattern, i) => {
    if (pattern) expect(Math.hypot(Math.floor(i / SIZE.width) - 80, (i % SIZE.width) - 130)).toBeLessThan(34);
  });
  const plain = textureSeeds(difference, trayDifference(blurred(red), tray), depth);
  expect(plain.data.some(Boolean)).toBe(false);
});

/** Means over 5 × 5 pixels. */
function blurred(picture: Raster): Raster {
  const data = picture.data.map((_, k) => {
    const i = Math.floor(k / 3);
    let sum = 0;
    for (let dy = -2; dy <= 2; dy++) {
      for (let dx = -2; dx <= 2; dx++) {
        const row = Math.min(SIZE.height - 1, Math.max(0, Math.floor(i / SIZE.width) + dy));
        const column = Math.min(SIZE.width - 1, Math.max(0, (i % SIZE.width) + dx));
        sum += picture.data[3 * at(row, column) + (k % 3)]! / 25;
      }
    }
    return sum;
  });
  return { ...picture, data };
}

it('finds edges of light and, counted more, of color', () => {
  const along = edges.data[at(80, 160)]!;
  expect(along).toBeGreaterThan(10 * grainEdge(edges));
  expect(edgeRelief(difference, 0).data[at(80, 160)]!).toBeLessThan(along);
  expect(grainEdge(edges)).toBeGreaterThan(0);
});

it('measures the largest disc that covers a place', () => {
  const thickness = localThickness(depth);
  expect(Math.abs(thickness(80, 130) - 30)).toBeLessThan(5);
  expect(thickness(10, 10)).toBe(0);
});
