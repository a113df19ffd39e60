import { expect, it } from 'vitest';
import { openOpenCv } from '../../src/vision/openCv';

it('opens in Node, once', async () => {
  const cv = await openOpenCv();
  expect(await openOpenCv()).toBe(cv);
  const mat = new cv.Mat(2, 3, cv.CV_32FC1);
  expect([mat.rows, mat.cols, mat.data32F.length]).toEqual([2, 3, 6]);
  mat.delete();
});
