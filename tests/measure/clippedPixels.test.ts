import { expect, it } from 'vitest';
import { clippedFrom } from '../../src/measure/clippedFrom';
import { clippedPixels } from '../../src/measure/clippedPixels';
import { linearFromSrgb } from '../../src/optics/srgbTransfer';

const LIMIT = clippedFrom({ width: 0, height: 0, channels: 3, data: new Float32Array() });
const pixels = (...rgb: number[]) =>
  clippedPixels({ width: rgb.length / 3, height: 1, channels: 3, data: Float32Array.from(rgb) });

it('marks a pixel when any one channel is at the limit', () => {
  expect([...pixels(0.5, 0.5, 0.5, 1, 0, 0, 0, 1, 0, 0, 0, 1).data]).toEqual([0, 1, 1, 1]);
});

it('leaves room for the last few of 256 levels only', () => {
  // IEC 61966-2-1: code 255 is the camera's limit; a compressed picture may show it as 252 and up.
  expect(linearFromSrgb(252 / 255)).toBeGreaterThan(LIMIT);
  expect(linearFromSrgb(245 / 255)).toBeLessThan(LIMIT);
});

it('marks less where a darker shot shows more', () => {
  const picture = { width: 2, height: 1, channels: 3, data: Float32Array.of(1, 2, 3, 3.95, 1, 1) } as const;
  expect([...clippedPixels({ ...picture, clipLevel: 4 }).data]).toEqual([0, 1]);
});
