import { expect, it } from 'vitest';
import { flawCount } from '../../src/grading/flawCount';

it('speaks of none, one, a part and many', () => {
  expect(flawCount(0, 'pit')).toBe('no pits');
  expect(flawCount(1, 'fracture')).toBe('1 fracture');
  expect(flawCount(0.2, 'pit')).toBe('0.2 pits');
  expect(flawCount(3, 'scratch')).toBe('3 scratches');
});
