import { expect, it } from 'vitest';
import { shrinkMask } from '../../src/measure/shrinkMask';
import golden from '../golden/measure.json';
import { drawMask, showMask } from '../helpers/drawMask';

it('takes one pixel off all around', () => {
  const mask = drawMask('.......', '.#####.', '.#####.', '.#####.', '.......');
  expect(showMask(shrinkMask(mask, 1))).toEqual(['.......', '.......', '..###..', '.......', '.......']);
});

// Source: SciPy 1.10 ndimage.binary_erosion with discs, tests/golden/measure.py.
it("leaves what SciPy's erosion leaves", () => {
  const mask = drawMask(...golden.erosion.mask);
  for (const [radius, left] of Object.entries(golden.erosion.left)) {
    expect(showMask(shrinkMask(mask, Number(radius)))).toEqual(left);
  }
});

it('counts beyond the picture as outside', () => {
  expect(showMask(shrinkMask(drawMask('###', '###', '###'), 1))).toEqual(['...', '.#.', '...']);
});

it('keeps all at radius zero and nothing of what is too thin', () => {
  const thin = drawMask('.....', '#####', '.....');
  expect(showMask(shrinkMask(thin, 0))).toEqual(showMask(thin));
  expect(showMask(shrinkMask(thin, 1))).toEqual(['.....', '.....', '.....']);
});
