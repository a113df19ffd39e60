import { expect, it } from 'vitest';
import { normalTail } from '../../src/compare/normalTail';
import golden from '../golden/compare.json';

it('agrees with SciPy to ten digits in both tails', () => {
  for (const { z, share } of golden.normalTail) {
    expect(Math.abs(normalTail(z) / share - 1), `z = ${z}`).toBeLessThan(1e-10);
  }
});

it('shares all between the two sides', () => {
  expect(normalTail(1.2) + normalTail(-1.2)).toBeCloseTo(1, 14);
});
