import { expect, it } from 'vitest';
import { exampleReading, exampleRow } from './exampleRow';
import { glossChanges } from './glossCompare';

const row = (stone: number, estimate: number | null) =>
  exampleRow({ stone, alpha: 0.1, reading: estimate === null ? null : exampleReading(estimate) });
const stones = (pairs: readonly (readonly [unknown, { readonly stone: number }])[]) =>
  pairs.map(([, { stone }]) => stone);

it('tells which stones came nearer to the truth and which went away from it, the largest change first', () => {
  const before = [row(1, 0.2), row(2, 0.11), row(3, 0.1), row(4, 0.15)];
  const after = [row(1, 0.12), row(2, 0.13), row(3, 0.1), row(4, 0.1)];
  const changes = glossChanges(before, after);
  expect(stones(changes.better)).toEqual([1, 4]);
  expect(stones(changes.worse)).toEqual([2]);
});

it('does not take the other side of the truth for a change', () => {
  const changes = glossChanges([row(1, 0.1 * 1.5)], [row(1, 0.1 / 1.5)]);
  expect([...changes.better, ...changes.worse]).toEqual([]);
});

it('tells numbers gained and lost, and leaves out stones of one run only', () => {
  const changes = glossChanges(
    [row(1, null), row(2, 0.1), row(3, 0.1)],
    [row(1, 0.1), row(2, null), row(4, 0.1)],
  );
  expect(changes.pairs.length).toBe(2);
  expect(changes.gained.map(({ stone }) => stone)).toEqual([1]);
  expect(changes.lost.map(({ stone }) => stone)).toEqual([2]);
});
