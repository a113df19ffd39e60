import { expect, it } from 'vitest';
import { openOpenCv } from '../../src/vision/openCv';
import { withMats } from '../../src/vision/withMats';
import { drawRaster } from '../helpers/drawRaster';

const cv = await openOpenCv();

it('gives matrices back, also when the work fails', () => {
  const kept: { rows: number }[] = [];
  withMats(cv, (mats) => kept.push(mats.empty()));
  expect(() =>
    withMats(cv, (mats) => {
      kept.push(mats.ofRaster(drawRaster([1, 2])));
      throw new Error('half done');
    }),
  ).toThrow('half done');
  for (const mat of kept) expect(() => mat.rows).toThrow('deleted');
});

it("says OpenCV's own sentence where OpenCV throws a number", () => {
  const tooWide = new cv.Size(-1, -1);
  expect(() =>
    withMats(cv, (mats) =>
      cv.resize(mats.ofRaster(drawRaster([1])), mats.empty(), tooWide, 0, 0, cv.INTER_AREA),
    ),
  ).toThrow(/^OpenCV: OpenCV\(4\.3\.0\).*resize/s);
});

it('does not run out of memory over many pictures', () => {
  const megabyte = { width: 512, height: 512, channels: 1, data: new Float32Array(512 * 512) } as const;
  for (let i = 0; i < 1500; i++) withMats(cv, (mats) => mats.ofRaster(megabyte));
});

it('refuses a raster whose size and values disagree', () => {
  const broken = { width: 2, height: 2, channels: 1, data: new Float32Array(3) } as const;
  expect(() => withMats(cv, (mats) => mats.ofRaster(broken))).toThrow(
    'A raster of 2 × 2 does not hold 3 values.',
  );
});
