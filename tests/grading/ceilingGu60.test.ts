import { expect, it } from 'vitest';
import { ceilingGu60 } from '../../src/grading/ceilingGu60';

// ISO 2813 / ASTM D523, Fresnel gloss at 60 degrees.
it.each([
  [1.4, 71.9],
  [1.5, 89.1],
  [1.54, 95.7],
  [1.567, 100],
  [1.6, 105.2],
])('is the standard value at n = %f', (n, gu60) => {
  expect(Math.abs(ceilingGu60(n) - gu60)).toBeLessThan(0.1);
});
