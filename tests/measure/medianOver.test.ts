import fc from 'fast-check';
import { expect, it } from 'vitest';
import { medianOver } from '../../src/measure/medianOver';
import { drawMask } from '../helpers/drawMask';

it('takes the middle value of the pixels inside', () => {
  expect(medianOver(Float32Array.from([9, 1, 5, 3, 9]), drawMask('.###.'))).toBe(3);
});

it('lies between the least and the greatest value, whatever their order', () => {
  const anyValues = fc.property(fc.array(fc.float({ noNaN: true }), { minLength: 1 }), (list) => {
    const values = Float32Array.from(list);
    const median = medianOver(values, drawMask('#'.repeat(values.length)));
    expect(values.filter((value) => value < median).length).toBeLessThanOrEqual(values.length / 2);
    expect(values.filter((value) => value > median).length).toBeLessThanOrEqual(values.length / 2);
  });
  fc.assert(anyValues);
});

it('is 0 where nothing is inside', () => {
  expect(medianOver(Float32Array.from([4, 5]), drawMask('..'))).toBe(0);
});
