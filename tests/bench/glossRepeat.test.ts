import { expect, it } from 'vitest';
import { exampleReading, exampleRow } from './exampleRow';
import { repeatability, repeatVerdict } from './glossRepeat';

const readings = (sameStone: string, gu60: readonly number[]) =>
  gu60.map((gu) => exampleRow({ sameStone, reading: exampleReading(0.1, gu) }));

it('pools the variances by degrees of freedom', () => {
  // Squares 2 + 2 about the means 11 and 51, and 1 + 2 degrees of freedom.
  const { stones, numbers, pooledSdGu } = repeatability([
    ...readings('a', [10, 12]),
    ...readings('b', [50, 51, 52]),
  ]);
  expect([stones, numbers]).toEqual([2, 5]);
  expect(pooledSdGu).toBeCloseTo(Math.sqrt(4 / 3), 12);
});

it('does not care how far the stones differ from each other', () => {
  const near = repeatability([...readings('a', [10, 12]), ...readings('b', [10, 12])]);
  const far = repeatability([...readings('a', [10, 12]), ...readings('b', [80, 82])]);
  expect(far.pooledSdGu).toBeCloseTo(near.pooledSdGu, 12);
});

it('leaves out stones read once, without a number or without a name', () => {
  const rows = [
    ...readings('a', [10]),
    exampleRow({ sameStone: 'a' }),
    exampleRow(),
    ...readings('b', [3, 5]),
  ];
  expect(repeatability(rows).byStone.map(({ stone }) => stone)).toEqual(['b']);
});

it('is not met when no stone was read twice', () => {
  expect(repeatVerdict(repeatability([])).met).toBe(false);
});
