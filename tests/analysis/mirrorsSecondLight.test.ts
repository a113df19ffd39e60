import { expect, it } from 'vitest';
import { mirrorsSecondLight } from '../../src/analysis/mirrorsSecondLight';
import { maskWhere } from '../../src/image/maskWhere';
import { highlightPlace } from '../../src/measure/highlightPlace';
import { normalize, type Vector } from '../../src/optics/vector';

const size = 101;
const mask = maskWhere(size, size, (i) => Math.hypot(Math.floor(i / size) - 50, (i % size) - 50) < 45);
const stone = { width: size, height: size, channels: 3, data: new Float32Array(3 * size * size) } as const;
const crop = {
  stone,
  mask,
  factor: 2,
  toPhoto: (row: number, column: number) => [2 * row + 300, 2 * column + 500] as const,
};
const lamp: Vector = normalize([0.3, 0.1, 1]);
const other: Vector = normalize([-0.35, -0.1, 1]);

function placeOf(half: Vector) {
  const { row, column } = highlightPlace(mask, half);
  const [photoRow, photoColumn] = crop.toPhoto(row, column);
  return { row: photoRow, column: photoColumn };
}

it('tells the second light from the lamp by where the highlight lies', () => {
  expect(mirrorsSecondLight(crop, placeOf(other), lamp, [other])).toBe(true);
  expect(mirrorsSecondLight(crop, placeOf(lamp), lamp, [other])).toBe(false);
});

it('leaves a highlight between both, or without a second light, to the lamp', () => {
  const [a, b] = [placeOf(lamp), placeOf(other)];
  const between = { row: (a.row + b.row) / 2, column: (a.column + b.column) / 2 };
  expect(mirrorsSecondLight(crop, between, lamp, [other])).toBe(false);
  expect(mirrorsSecondLight(crop, placeOf(other), lamp, [])).toBe(false);
});

it('does not tell lights apart that stand side by side', () => {
  const beside: Vector = normalize([0.36, 0.1, 1]);
  expect(mirrorsSecondLight(crop, placeOf(beside), lamp, [beside])).toBe(false);
});
