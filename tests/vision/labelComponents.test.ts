import { expect, it } from 'vitest';
import { labelComponents } from '../../src/vision/labelComponents';
import { openOpenCv } from '../../src/vision/openCv';
import { drawMask } from '../helpers/drawMask';
import { golden, MASK } from '../helpers/openCvGolden';

const cv = await openOpenCv();

it('takes pixels that touch at a corner as one piece, and measures it', () => {
  const { labels, components } = labelComponents(cv, drawMask('#...#', '.#...', '....#'));
  expect([...labels]).toEqual([1, 0, 0, 0, 2, 0, 1, 0, 0, 0, 0, 0, 0, 0, 3]);
  expect(components.map(({ areaPx }) => areaPx)).toEqual([2, 1, 1]);
  expect(components[0]).toEqual({
    label: 1,
    areaPx: 2,
    row: 0.5,
    column: 0.5,
    box: { row: 0, column: 0, width: 2, height: 2 },
  });
});

// Source: OpenCV 4.6, tests/golden/opencv.py. Numbering may differ between versions: compared piece by piece.
it("finds OpenCV's own pieces", () => {
  const found = labelComponents(cv, MASK).components.map(({ areaPx, row, column, box }) => ({
    areaPx,
    row,
    column,
    box: [box.column, box.row, box.width, box.height],
  }));
  expect(found).toHaveLength(golden.components.components.length);
  for (const piece of golden.components.components) expect(found).toContainEqual(piece);
});

it('counts every pixel of the mask once', () => {
  const { components } = labelComponents(cv, MASK);
  const inside = MASK.data.reduce((sum, value) => sum + value, 0);
  expect(components.reduce((sum, { areaPx }) => sum + areaPx, 0)).toBe(inside);
});

it('finds nothing in an empty mask', () => {
  expect(labelComponents(cv, drawMask('...', '...')).components).toEqual([]);
});
