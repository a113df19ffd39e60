import { expect, it } from 'vitest';
import { stoneCrop } from '../../src/analysis/stoneCrop';
import type { Photo } from '../../src/image/photo';

const [WIDTH, HEIGHT] = [120, 100];
/** Black but for one block of white pixels. */
function withBlock(row: number, column: number, side: number): Photo {
  const rgba = new Uint8ClampedArray(4 * WIDTH * HEIGHT);
  for (let r = row; r < row + side; r++) {
    for (let c = column; c < column + side; c++) rgba.fill(255, 4 * (r * WIDTH + c), 4 * (r * WIDTH + c) + 4);
  }
  return { widthPx: WIDTH, heightPx: HEIGHT, rgba };
}

const square = [
  [20, 30],
  [20, 79],
  [69, 79],
  [69, 30],
] as const;
const WHITE = [1, 1, 1] as const;
const brightest = (data: Float32Array) => Math.floor(data.indexOf(Math.max(...data)) / 3);

it('keeps the pixels of a photo of usual sharpness, and knows where each lies', () => {
  const crop = stoneCrop(withBlock(40, 55, 1), square, 0.1, WHITE);
  const at = brightest(crop.stone.data);
  expect(crop.factor).toBe(1);
  expect(crop.toPhoto(Math.floor(at / crop.stone.width), at % crop.stone.width)).toEqual([40, 55]);
});

it('averages blocks of a photo finer than it needs, and gives back the middle of each', () => {
  // 32 pixels per millimeter are twice what is used. The crop begins two pixels outside the outline.
  const crop = stoneCrop(withBlock(40, 56, 2), square, 1 / 32, WHITE);
  const at = brightest(crop.stone.data);
  expect(crop.factor).toBe(2);
  expect(crop.stone.data[3 * at]).toBeCloseTo(1, 6);
  expect(crop.toPhoto(Math.floor(at / crop.stone.width), at % crop.stone.width)).toEqual([40.5, 56.5]);
});

it('covers the outline with its mask at every resolution', () => {
  for (const [mmPerPx, factor] of [
    [0.1, 1],
    [1 / 32, 2],
    [1 / 48, 3],
  ] as const) {
    const { mask, toPhoto } = stoneCrop(withBlock(0, 0, 1), square, mmPerPx, WHITE);
    const inside = mask.data.reduce((sum, value) => sum + value, 0);
    expect(Math.abs((inside * factor * factor) / 49 ** 2 - 1)).toBeLessThan(0.1);
    mask.data.forEach((value, i) => {
      const [row, column] = toPhoto(Math.floor(i / mask.width), i % mask.width);
      if (value) expect(row >= 20 && row <= 69 && column >= 30 && column <= 79).toBe(true);
    });
  }
});

it("divides the lamp's color out", () => {
  const crop = stoneCrop(withBlock(30, 40, 20), square, 0.1, [2, 1, 0.5]);
  const at = 3 * brightest(crop.stone.data);
  expect([...crop.stone.data.subarray(at, at + 3)]).toEqual([0.5, 1, 2]);
});

it('ends at the edge of the photo', () => {
  const corner = [
    [-5, -5],
    [-5, 30],
    [30, 30],
    [30, -5],
  ] as const;
  const crop = stoneCrop(withBlock(0, 0, 1), corner, 0.1, WHITE);
  expect(crop.toPhoto(0, 0)).toEqual([0, 0]);
  expect(crop.stone.data[0]).toBeCloseTo(1, 6);
});
