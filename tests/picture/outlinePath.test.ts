import { expect, it } from 'vitest';
import { outlinePath } from '../../src/picture/outlinePath';

it('draws the corners of a square and drops what lies on its sides', () => {
  const square = [
    [0, 0],
    [0, 5],
    [0, 10],
    [5, 10],
    [10, 10],
    [10, 5],
    [10, 0],
    [5, 0],
  ] as const;
  expect(outlinePath(square, 0.1)).toBe('M0 0L10 0L10 10L0 10Z');
});

it('keeps a corner that sticks out farther than the tolerance and drops it otherwise', () => {
  const dented = [
    [0, 0],
    [1, 5],
    [0, 10],
    [10, 10],
    [10, 0],
  ] as const;
  expect(outlinePath(dented, 0.9)).toContain('5 1');
  expect(outlinePath(dented, 1.1)).not.toContain('5 1');
});

it('draws nothing for fewer than three points', () => {
  expect(
    outlinePath(
      [
        [1, 2],
        [3, 4],
      ],
      1,
    ),
  ).toBe('');
  expect(outlinePath([], 1)).toBe('');
});
