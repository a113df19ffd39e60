import { expect, it } from 'vitest';
import { rimShift } from '../../src/measure/rimShift';

it('is next to nothing on a sharp picture', () => {
  expect(rimShift(80, 0.2, 1.52)).toBeLessThan(0.15);
});

it('grows with the blur', () => {
  const shifts = [0.4, 0.8, 1.6, 3.2].map((blurPx) => rimShift(80, blurPx, 1.52));
  expect(shifts).toEqual([...shifts].sort((a, b) => a - b));
  expect(shifts[3]! / shifts[0]!).toBeGreaterThan(2);
});

it('scales with the picture', () => {
  // Twice the pixels of the same scene; the profile is sampled every sixteenth of a pixel.
  expect(Math.abs(rimShift(160, 2, 1.52) - 2 * rimShift(80, 1, 1.52))).toBeLessThan(0.2);
});

it('stays inside the blur itself', () => {
  for (const blurPx of [0.5, 1, 2]) expect(rimShift(60, blurPx, 1.52)).toBeLessThan(blurPx);
});
