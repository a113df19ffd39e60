import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lnInPlace } from '../../src/kernels/lnInPlace';

function lnOf(value: number): number {
  // Amid others, so that a place in a longer array is tried too.
  const values = Float32Array.of(1, value, 1);
  lnInPlace(values.subarray(1));
  expect(values[0]).toBe(1);
  return values[1]!;
}

// Checked against the language's own logarithm.
it('is the natural logarithm to single precision', () => {
  const values = fc.oneof(
    fc.double({ min: 1e-6, max: 100, noNaN: true }),
    fc.double({ min: -87, max: 88, noNaN: true }).map(Math.exp),
  );
  fc.assert(
    fc.property(values.map(Math.fround), (value) => {
      const expected = Math.log(value);
      expect(Math.abs(lnOf(value) - expected)).toBeLessThan(1e-9 + 1e-7 * Math.abs(expected));
    }),
    { numRuns: 2000 },
  );
});

it('gives whole numbers of ln 2 for powers of two', () => {
  for (const power of [-20, -1, 1, 7]) expect(lnOf(2 ** power)).toBe(Math.fround(power * Math.LN2));
  expect(Math.abs(lnOf(1))).toBeLessThan(1e-11);
});
