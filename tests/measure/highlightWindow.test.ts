import { expect, it } from 'vitest';
import { highlightWindow } from '../../src/measure/highlightWindow';

const [WIDTH, HEIGHT] = [200, 120];
/** Radiance that tells where it comes from. */
const light = {
  width: WIDTH,
  height: HEIGHT,
  channels: 1 as const,
  data: Float32Array.from({ length: WIDTH * HEIGHT }, (_, i) => (i % WIDTH) + 1000 * Math.floor(i / WIDTH)),
};
const all = { width: WIDTH, height: HEIGHT, data: new Uint8Array(WIDTH * HEIGHT).fill(1) };
const none = { ...all, data: new Uint8Array(WIDTH * HEIGHT) };
const withPixel = (row: number, column: number, value: number) => {
  const data = Uint8Array.from(value === 0 ? all.data : none.data);
  data[row * WIDTH + column] = value;
  return { ...all, data };
};

it('cuts the pixels around a place', () => {
  const window = highlightWindow(light, all, none, { row: 50, column: 80 }, 3);
  expect([window.width, window.height, window.stepPx, window.row, window.column]).toEqual([7, 7, 1, 47, 77]);
  expect(window.values[0]).toBe(47077);
  expect([...window.use].every((use) => use === 1)).toBe(true);
});

it('averages a large window down to at most 43 across, and keeps its place', () => {
  const window = highlightWindow(light, all, none, { row: 60, column: 100 }, 50);
  expect(window.stepPx).toBe(3);
  expect(Math.max(window.width, window.height)).toBeLessThanOrEqual(43);
  // The radiance grows evenly, so the mean of a block is the radiance at its center.
  window.values.forEach((value, i) => {
    const row = window.row + Math.floor(i / window.width) * window.stepPx;
    const column = window.column + (i % window.width) * window.stepPx;
    expect(value).toBeCloseTo(column + 1000 * row, 6);
  });
});

it('ends at the edge of the crop', () => {
  const window = highlightWindow(light, all, none, { row: 1, column: 198 }, 5);
  expect([window.row, window.column, window.height, window.width]).toEqual([0, 193, 7, 7]);
});

it('leaves out a block that is not wholly stone and marks one that is clipped anywhere', () => {
  const at = { row: 60, column: 100 };
  const index = (window: { stepPx: number; row: number; column: number; width: number }) =>
    Math.round((60 - window.row) / window.stepPx) * window.width +
    Math.round((100 - window.column) / window.stepPx);
  const cut = highlightWindow(light, withPixel(60, 100, 0), none, at, 50);
  const clipped = highlightWindow(light, all, withPixel(60, 100, 1), at, 50);
  expect(cut.use[index(cut)]).toBe(0);
  expect(clipped.use[index(clipped)]).toBe(2);
  expect(cut.use.filter((use) => use !== 1).length).toBe(1);
  expect(clipped.use.filter((use) => use !== 1).length).toBe(1);
});
