import { expect, it } from 'vitest';
import { axisScale, roundMarks } from '../../src/ui/stone/chartScale';

it('maps the ends of an axis to its places and the middle to the middle', () => {
  const x = axisScale([0, 8], [100, 300]);
  expect([x(0), x(4), x(8)]).toEqual([100, 200, 300]);
});

it('puts every value at the first place when the ends are equal', () => {
  expect(axisScale([2, 2], [100, 300])(2)).toBe(100);
});

it('marks round values up to the end and not beyond', () => {
  expect(roundMarks(100, 5)).toEqual([0, 20, 40, 60, 80, 100]);
  expect(roundMarks(0.07, 3)).toEqual([0, 0.05]);
  expect(roundMarks(5.75, 5)).toEqual([0, 2, 4]);
});
