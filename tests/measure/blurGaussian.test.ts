import fc from 'fast-check';
import { expect, it } from 'vitest';
import { blurGaussian } from '../../src/measure/blurGaussian';
import golden from '../golden/measure.json';
import { largestDifference } from '../helpers/largestDifference';

const { width, height, picture, blurred } = golden.blur;

it('spreads one bright pixel as a bell', () => {
  const values = new Float64Array(15 * 15);
  values[7 * 15 + 7] = 1;
  blurGaussian(values, 15, 15, 1.5);
  expect(values.reduce((sum, value) => sum + value, 0)).toBeCloseTo(1, 6);
  // A Gaussian of σ = 1.5 falls to exp(−2² / (2 · 1.5²)) of its peak two pixels away.
  expect(values[7 * 15 + 9]! / values[7 * 15 + 7]!).toBeCloseTo(Math.exp(-4 / 4.5), 6);
  expect(values[5 * 15 + 7]).toBeCloseTo(values[7 * 15 + 9]!, 7);
});

// Source: SciPy 1.10 ndimage.gaussian_filter, mode nearest, cut off at 4 σ; tests/golden/measure.py.
it("gives SciPy's values up to where the bell is cut off", () => {
  for (const [sigmaPx, reference] of Object.entries(blurred)) {
    const values = Float64Array.from(picture);
    blurGaussian(values, width, height, Number(sigmaPx));
    expect(largestDifference(values, reference)).toBeLessThan(golden.tolerance.blur);
  }
});

it('makes two blurs one of their root sum of squares', () => {
  // Wide enough that the sampled bell is a bell, and far from the border.
  const twice = new Float64Array(41);
  twice[20] = 1;
  const once = Float64Array.from(twice);
  blurGaussian(twice, 41, 1, 1.5);
  blurGaussian(twice, 41, 1, 2);
  blurGaussian(once, 41, 1, 2.5);
  expect(largestDifference(twice, [...once])).toBeLessThan(5e-4);
});

it('never goes beyond the darkest and the brightest pixel', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 12, maxLength: 12 }),
      fc.double({ min: 0, max: 6, noNaN: true }),
      (list, sigmaPx) => {
        const values = Float64Array.from(list);
        blurGaussian(values, 4, 3, sigmaPx);
        expect(Math.max(...values)).toBeLessThanOrEqual(Math.max(...list) + 1e-6);
        expect(Math.min(...values)).toBeGreaterThanOrEqual(Math.min(...list) - 1e-6);
      },
    ),
  );
});

it('leaves the picture alone when there is no blur', () => {
  const values = Float64Array.of(3, 1, 2, 7);
  blurGaussian(values, 2, 2, 0);
  expect([...values]).toEqual([3, 1, 2, 7]);
});
