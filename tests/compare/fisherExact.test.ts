import { expect, it } from 'vitest';
import { fisherExact } from '../../src/compare/fisherExact';
import golden from '../golden/compare.json';

it('says of the lady who knew three of four cups what Fisher said', () => {
  // Fisher 1935, The Design of Experiments, chapter 2: 1, 16, 36, 16 and 1 of 70 ways; both sides of 17 of 70.
  expect(fisherExact(3, 4, 1, 4).odds).toBeCloseTo(34 / 70, 12);
});

it('agrees with SciPy', () => {
  for (const { table, odds } of golden.fisher) {
    const [hits, misses, otherHits, otherMisses] = table as [number, number, number, number];
    const found = fisherExact(hits, hits + misses, otherHits, otherHits + otherMisses);
    expect(Math.abs(found.odds / odds - 1), table.join(' ')).toBeLessThan(golden.tolerance);
  }
});

it('finds nothing where all were hits', () => {
  expect(fisherExact(6, 6, 9, 9)).toEqual({ odds: 1, lean: 0 });
});
