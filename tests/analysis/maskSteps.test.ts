import { expect, it } from 'vitest';
import { closeByDisc, openByDisc } from '../../src/analysis/discMorphology';
import { fillHoles } from '../../src/analysis/fillHoles';
import { splitTouching } from '../../src/analysis/splitTouching';
import { maskWhere } from '../../src/image/maskWhere';
import type { Mask } from '../../src/image/raster';
import { openOpenCv } from '../../src/vision/openCv';
import golden from '../golden/outlines.json';
import { drawMask, showMask } from '../helpers/drawMask';

const cv = await openOpenCv();
const BLOB: Mask = { ...golden.blob, data: Uint8Array.from(golden.blob.data) };
const countOf = (mask: Mask) => mask.data.reduce((sum, inside) => sum + inside, 0);
const discs = (...circles: [row: number, column: number, radius: number][]) =>
  maskWhere(120, 60, (i) =>
    circles.some(([row, column, r]) => Math.hypot(Math.floor(i / 120) - row, (i % 120) - column) <= r),
  );

it('fills a hole, and leaves a bay open to the picture edge', () => {
  expect(showMask(fillHoles(cv, drawMask('.###.', '.#.#.', '.###.', '#...#')))).toEqual([
    '.###.',
    '.###.',
    '.###.',
    '#...#',
  ]);
});

// Source: SciPy, tests/golden/outlines.py.
it('fills the holes that SciPy fills', () => {
  expect([...fillHoles(cv, BLOB).data]).toEqual(golden.filled);
});

// Source: SciPy's exact distances, tests/golden/outlines.py.
it('opens and closes by a disc as SciPy does', () => {
  expect([...openByDisc(cv, BLOB, golden.radius).data]).toEqual(golden.opened);
  expect([...closeByDisc(cv, BLOB, golden.radius).data]).toEqual(golden.closed);
});

it('opens to less and closes to more, and does nothing for a radius of 0', () => {
  const opened = openByDisc(cv, BLOB, 2);
  const closed = closeByDisc(cv, BLOB, 2);
  BLOB.data.forEach((inside, i) => {
    expect(opened.data[i]! <= inside && inside <= closed.data[i]!).toBe(true);
  });
  expect(openByDisc(cv, BLOB, 0)).toEqual(BLOB);
});

it('separates two stones that touch, each pixel going to one of them', () => {
  const both = discs([30, 35, 22], [30, 78, 22]);
  const parts = splitTouching(cv, both);
  expect(parts).toHaveLength(2);
  expect(parts.reduce((sum, part) => sum + countOf(part), 0)).toBe(countOf(both));
  for (const part of parts) expect(countOf(part) / countOf(both)).toBeCloseTo(0.5, 1);
});

it('separates a chain of three stones of unlike size', () => {
  expect(splitTouching(cv, discs([30, 25, 20], [30, 58, 14], [30, 88, 18]))).toHaveLength(3);
});

it('leaves one round stone, and one long one, whole', () => {
  expect(splitTouching(cv, discs([30, 60, 25]))).toHaveLength(1);
  const long = maskWhere(
    120,
    60,
    (i) => ((i % 120) - 60) ** 2 / 55 ** 2 + (Math.floor(i / 120) - 30) ** 2 / 15 ** 2 <= 1,
  );
  expect(splitTouching(cv, long)).toEqual([long]);
});
