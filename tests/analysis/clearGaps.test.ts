import { expect, it } from 'vitest';
import { clearGaps } from '../../src/analysis/clearGaps';
import { TRAY } from '../../src/analysis/markStones';
import { maskWhere } from '../../src/image/maskWhere';
import type { Mask } from '../../src/image/raster';
import { openOpenCv } from '../../src/vision/openCv';

const cv = await openOpenCv();
const SIZE = { width: 120, height: 60 };
const whole = { row: 0, column: 0, ...SIZE };
const LEAST_PX = 100;

const at = (i: number) => ({ x: i % SIZE.width, y: Math.floor(i / SIZE.width) });
const drawn = (inside: (x: number, y: number) => boolean) =>
  maskWhere(SIZE.width, SIZE.height, (i) => inside(at(i).x, at(i).y));
const discAt = (column: number, radius: number) => (x: number, y: number) =>
  Math.hypot(x - column, y - 30) < radius;
const left = discAt(30, 20);
const right = discAt(90, 20);
const isBetween = (x: number, y: number) => x >= 30 && x <= 90 && Math.abs(y - 30) < 18;
const cleared = (mask: Mask, area: Mask) => {
  const markers = new Int32Array(mask.data.length);
  return { pieces: clearGaps(cv, [{ box: whole, mask }], area, LEAST_PX, markers), markers };
};

it('takes the lit tray between two stones out of the piece that reached over it', () => {
  const { pieces, markers } = cleared(
    drawn((x, y) => left(x, y) || right(x, y) || isBetween(x, y)),
    drawn((x, y) => left(x, y) || right(x, y)),
  );
  expect(pieces.map(({ box }) => box.column + box.width / 2).sort((a, b) => a - b)).toEqual([30.5, 90.5]);
  expect(markers[30 * SIZE.width + 60]).toBe(TRAY);
  expect(markers[30 * SIZE.width + 30]).toBe(0);
});

it('leaves one gray stone whole whose middle looks like tray', () => {
  const ring = (x: number, y: number) => left(x, y) && !discAt(32, 13)(x, y);
  const { pieces, markers } = cleared(drawn(left), drawn(ring));
  expect(pieces).toHaveLength(1);
  expect(pieces[0]!.mask.data).toEqual(drawn(left).data);
  expect(markers.every((marker) => marker === 0)).toBe(true);
});

it('leaves a piece alone that is clearly stone all over', () => {
  const stone = drawn(left);
  expect(cleared(stone, stone).pieces).toEqual([{ box: whole, mask: stone }]);
});
