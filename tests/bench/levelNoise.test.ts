import { expect, it } from 'vitest';
import { levelNoise, splitNoise } from './levelNoise';

/** A stone of true level 4 and limit 1 whose readings have these roots. */
const readAs = (...roots: number[]) => roots.map((root) => ({ found: root ** 2, true: 4, limit: 1 }));

it('takes apart what a stone keeps and what is new at each check, worked by hand', () => {
  // Roots 1.9, 2.1 and 2.3, 2.1 about means 2.0 and 2.2. Share found: 17.72 of 16, so roots count over sqrt(1.1075).
  // Within: 4 · 0.1² / (4 − 2) = 0.02. Between: (2 · 0.1² + 2 · 0.1²) / 1 = 0.04; kept² = (0.04 − 0.02) / 2 = 0.01.
  const { kept, fresh, stones, readings } = splitNoise([readAs(1.9, 2.1), readAs(2.3, 2.1)]);
  const scale = Math.sqrt(17.72 / 16);
  expect(fresh * scale).toBeCloseTo(Math.sqrt(0.02), 10);
  expect(kept * scale).toBeCloseTo(0.1, 10);
  expect([stones, readings]).toEqual([2, 4]);
});

it('finds nothing kept where stones differ no more than their readings', () => {
  expect(splitNoise([readAs(1.8, 2.2), readAs(2.2, 1.8)]).kept).toBe(0);
});

it('finds nothing new where every check reads the same', () => {
  const { fresh, freshMiddle, kept } = splitNoise([readAs(1.9, 1.9), readAs(2.1, 2.1), readAs(2, 2)]);
  expect(fresh).toBeCloseTo(0, 12);
  expect(freshMiddle).toBeCloseTo(0, 12);
  expect(kept).toBeGreaterThan(0.05);
});

it('leaves out stones seen once and stones without flaws', () => {
  const sound = [
    { found: 0, true: 0, limit: 1 },
    { found: 0, true: 0, limit: 1 },
  ];
  expect(splitNoise([readAs(1.9, 2.1), readAs(2.3, 2.1), readAs(9), sound]).stones).toBe(2);
});

it('does not let a single stone make the noise', () => {
  const even = Array.from({ length: 30 }, (_, k) => readAs(1.9 + k / 150)).flat();
  const odd = [...even, ...readAs(0)];
  expect(levelNoise(odd)).toBeLessThan(1.2 * levelNoise(even));
});
