import fc from 'fast-check';
import { expect, it } from 'vitest';
import { FINISHES, finishOf } from '../../src/grading/finish';

// MPI gloss and sheen levels by the 60° reading.
it.each([
  [0, 'matte'],
  [9.9, 'matte'],
  [10, 'satin'],
  [34.9, 'satin'],
  [35, 'semi-gloss'],
  [70, 'gloss'],
  [85, 'mirror'],
  [130, 'mirror'],
])('calls %f gloss units %s', (gu60, finish) => {
  expect(finishOf(gu60)).toBe(finish);
});

it('never names a duller finish for a higher reading', () => {
  const reading = fc.double({ min: 0, max: 150, noNaN: true });
  fc.assert(
    fc.property(reading, reading, (a, b) => {
      const rank = (gu60: number) => FINISHES.indexOf(finishOf(gu60));
      expect(rank(Math.max(a, b))).toBeGreaterThanOrEqual(rank(Math.min(a, b)));
    }),
  );
});

it('refuses a negative reading', () => {
  expect(() => finishOf(-1)).toThrow('A gloss reading must be 0 or more, not -1.');
});
