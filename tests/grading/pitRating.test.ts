import { expect, it } from 'vitest';
import { pitRating } from '../../src/grading/pitRating';

// Source: ASTM G46, standard rating chart, values from memory: A-3 is 5 · 10⁴ pits per m², B-2 is 2.0 mm².
it.each([
  { perM2: 2.5e3, mm2: 0.5, says: { density: 'A-1', size: 'B-1' } },
  { perM2: 1e4, mm2: 2, says: { density: 'A-2', size: 'B-2' } },
  { perM2: 5e4, mm2: 8, says: { density: 'A-3', size: 'B-3' } },
  { perM2: 1e5, mm2: 12.5, says: { density: 'A-4', size: 'B-4' } },
  { perM2: 5e5, mm2: 24.5, says: { density: 'A-5', size: 'B-5' } },
])('gives the chart’s own figures their class: $says', ({ perM2, mm2, says }) => {
  const count = 8;
  expect(pitRating(count, (1e4 * count) / perM2, count * mm2)).toEqual(says);
});

it('takes the nearest class, and none far below the first', () => {
  expect(pitRating(3, 1, 3 * 3).density).toBe('A-3');
  expect(pitRating(1, 20, 0.1)).toEqual({ density: null, size: null });
  expect(pitRating(0, 5, 0)).toEqual({ density: null, size: null });
});
