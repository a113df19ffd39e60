import { expect, it } from 'vitest';
import { plainNumber } from '../../src/texts/plainNumber';

it.each([
  [0, '0'],
  [0.5, '0.5'],
  [0.046, '0.05'],
  [3.06, '3.1'],
  [3, '3'],
  [0.996, '1'],
  [11.4, '11'],
  [240.2, '240'],
])('says %f as %s', (value, words) => {
  expect(plainNumber(value)).toBe(words);
});
