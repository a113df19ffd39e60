import { expect, it } from 'vitest';
import { stoneAt } from '../../src/picture/stoneAt';

const square = (id: number, row: number, column: number) => ({
  id,
  outline: [
    [row, column],
    [row, column + 10],
    [row + 10, column + 10],
    [row + 10, column],
  ] as const,
});
const stones = [square(1, 0, 0), square(2, 0, 30)];

it('finds the stone under the finger', () => {
  expect(stoneAt(stones, [5, 5], 0)?.id).toBe(1);
  expect(stoneAt(stones, [5, 35], 0)?.id).toBe(2);
});

it('takes the nearer of two stones when the finger is between them', () => {
  expect(stoneAt(stones, [5, 18], 12)?.id).toBe(1);
  expect(stoneAt(stones, [5, 22], 12)?.id).toBe(2);
});

it('finds none beyond the reach of a thumb', () => {
  expect(stoneAt(stones, [5, 20], 9)).toBeNull();
  expect(stoneAt([], [5, 5], 100)).toBeNull();
});

it('does not take the bay of a bent stone for the stone', () => {
  const bent = {
    id: 3,
    outline: [
      [0, 0],
      [0, 30],
      [30, 30],
      [30, 20],
      [10, 20],
      [10, 0],
    ] as const,
  };
  expect(stoneAt([bent], [25, 5], 0)).toBeNull();
  expect(stoneAt([bent], [25, 25], 0)?.id).toBe(3);
});
