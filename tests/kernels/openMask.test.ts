import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Mask } from '../../src/image/raster';
import { openMask } from '../../src/kernels/openMask';
import { openOpenCv } from '../../src/vision/openCv';
import { drawMask, showMask } from '../helpers/drawMask';
import { golden, MASK } from '../helpers/openCvGolden';

const cv = await openOpenCv();

it('removes a bridge and a speck', () => {
  const opened = openMask(drawMask('.#.....#.', '###...###', '.#######.', '.......#.', '#........'), 1);
  expect(showMask(opened)).toEqual(['.#.....#.', '###...###', '.#.....#.', '.........', '.........']);
});

// Source: OpenCV 4.6, tests/golden/opencv.py.
it("gives OpenCV's own mask", () => {
  expect([...openMask(MASK, 1).data]).toEqual(golden.openMask1);
});

function openedByOpenCv({ width, height, data }: Mask, radius: number): number[] {
  const side = 2 * radius + 1;
  const [from, to] = [new cv.Mat(height, width, cv.CV_8UC1), new cv.Mat()];
  const disc = cv.getStructuringElement(cv.MORPH_ELLIPSE, new cv.Size(side, side));
  from.data.set(data);
  cv.morphologyEx(from, to, cv.MORPH_OPEN, disc);
  const opened = [...to.data];
  for (const mat of [from, to, disc]) mat.delete();
  return opened;
}

// Source: OpenCV as the package opencv-wasm has it.
it('is what OpenCV makes of any mask, at its border too', () => {
  const anyMask = fc.integer({ min: 1, max: 40 }).chain((width) =>
    fc.record({
      width: fc.constant(width),
      // Mostly inside, so that wide discs fit in somewhere.
      pixels: fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 23 * width, maxLength: 23 * width }),
    }),
  );
  fc.assert(
    fc.property(anyMask, fc.integer({ min: 0, max: 6 }), ({ width, pixels }, radius) => {
      const mask = { width, height: 23, data: Uint8Array.from(pixels, (pixel) => (pixel > 0 ? 1 : 0)) };
      expect([...openMask(mask, radius).data]).toEqual(openedByOpenCv(mask, radius));
    }),
    { numRuns: 300 },
  );
});

it('changes nothing the second time', () => {
  const once = openMask(MASK, 2);
  expect(openMask(once, 2)).toEqual(once);
});

it('leaves a mask as it is for a radius of 0, and refuses a broken one', () => {
  expect([...openMask(MASK, 0).data]).toEqual([...MASK.data]);
  expect(() => openMask(MASK, 1.5)).toThrow(
    'A radius of 1.5 pixels is not a whole number of them, 0 or more.',
  );
});
