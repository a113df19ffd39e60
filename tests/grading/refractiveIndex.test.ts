import { expect, it } from 'vitest';
import { refractiveIndex } from '../../src/grading/refractiveIndex';

it('takes the middle of the handbook range', () => {
  // Gemmological handbook tables: chalcedony 1.530 to 1.540.
  expect(refractiveIndex('agate').n).toBeCloseTo(1.535, 12);
});

it('widens the range when nothing is known', () => {
  expect(refractiveIndex(null)).toEqual({ n: 1.54, low: 1.45, high: 1.7 });
});
