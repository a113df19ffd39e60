import fc from 'fast-check';
import { expect, it } from 'vitest';
import { nthSmallest } from '../../src/image/nthSmallest';

const numbers = fc.array(fc.float({ noNaN: true }), { minLength: 1, maxLength: 200 });

it('law: gives what sorting gives, at every place', () => {
  fc.assert(
    fc.property(numbers, fc.nat(), (values, some) => {
      const place = some % values.length;
      const sorted = Float32Array.from(values).sort();
      // Sorting tells −0 from 0; no measurement does.
      expect(nthSmallest(Float32Array.from(values), place)! - sorted[place]! || 0).toBe(0);
    }),
  );
});

it('leaves the smaller before and the larger after', () => {
  const values = Float64Array.of(5, 1, 4, 1, 3, 9, 2);
  expect(nthSmallest(values, 3)).toBe(3);
  expect(Math.max(...values.subarray(0, 3))).toBeLessThanOrEqual(3);
  expect(Math.min(...values.subarray(4))).toBeGreaterThanOrEqual(3);
});

it('gives nothing where nothing is', () => {
  expect(nthSmallest(new Float32Array(0), 0)).toBeUndefined();
  expect(nthSmallest(Float32Array.of(1), 1)).toBeUndefined();
});
