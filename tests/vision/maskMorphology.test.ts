import { expect, it } from 'vitest';
import { closeMask } from '../../src/vision/closeMask';
import { openOpenCv } from '../../src/vision/openCv';
import { openMask } from '../../src/vision/openMask';
import { drawMask, showMask } from '../helpers/drawMask';
import { golden, MASK } from '../helpers/openCvGolden';

const cv = await openOpenCv();

it('opening removes a bridge and a speck', () => {
  const opened = openMask(cv, drawMask('.#.....#.', '###...###', '.#######.', '.......#.', '#........'), 1);
  expect(showMask(opened)).toEqual(['.#.....#.', '###...###', '.#.....#.', '.........', '.........']);
});

it('closing fills a hole', () => {
  expect(showMask(closeMask(cv, drawMask('#####', '##.##', '#####'), 1))).toEqual([
    '#####',
    '#####',
    '#####',
  ]);
});

// Source: OpenCV 4.6, tests/golden/opencv.py.
it("gives OpenCV's own masks", () => {
  expect([...openMask(cv, MASK, 1).data]).toEqual(golden.openMask1);
  expect([...closeMask(cv, MASK, 2).data]).toEqual(golden.closeMask2);
});

it('changes nothing the second time', () => {
  const once = openMask(cv, MASK, 2);
  expect(openMask(cv, once, 2)).toEqual(once);
});

it('leaves a mask as it is for a radius of 0, and refuses a broken one', () => {
  expect([...openMask(cv, MASK, 0).data]).toEqual([...MASK.data]);
  expect(() => closeMask(cv, MASK, 1.5)).toThrow(
    'A radius of 1.5 pixels is not a whole number of them, 0 or more.',
  );
});
