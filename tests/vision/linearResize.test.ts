import { expect, it } from 'vitest';
import { linearResize } from '../../src/vision/linearResize';
import { openOpenCv } from '../../src/vision/openCv';

const cv = await openOpenCv();
const row = { width: 2, height: 1, channels: 1, data: Float32Array.of(0, 1) } as const;

// Pixel centers at half pixels: new centers lie at −0.25, 0.25, 0.75 and 1.25 of the old ones.
it('interpolates between pixel centers', () => {
  expect([...linearResize(cv, row, 4, 1).data]).toEqual([0, 0.25, 0.75, 1]);
});

it('refuses to shrink', () => {
  expect(() => linearResize(cv, row, 1, 1)).toThrow(RangeError);
});
