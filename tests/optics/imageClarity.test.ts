import fc from 'fast-check';
import { expect, it } from 'vitest';
import { COMB_WIDTHS_MM, type CombWidthMm, imageClarity } from '../../src/optics/imageClarity';
import golden from '../golden/glossIntegral.json';

it('is 100 on a perfect polish, through every comb', () => {
  for (const combMm of COMB_WIDTHS_MM) expect(imageClarity(0, combMm)).toBeCloseTo(100, 8);
});

it('is the contrast that the Fourier series of the comb gives', () => {
  // tests/golden/glossIntegral.json: SciPy, the lobe's transfer function by the Bessel function K₁.
  for (const [alpha, combMm, percent] of golden.imageClarity.rows as [number, CombWidthMm, number][]) {
    expect(Math.abs(imageClarity(alpha, combMm) - percent)).toBeLessThan(golden.tolerance.imageClarity);
  }
});

const roughness = fc.double({ min: 0, max: 1, noNaN: true });
const comb = fc.constantFrom(...COMB_WIDTHS_MM);

it('never rises as the surface roughens', () => {
  fc.assert(
    fc.property(roughness, roughness, comb, (a, b, combMm) => {
      // Below a millionth of a percent the end of the sum decides.
      expect(imageClarity(Math.max(a, b), combMm)).toBeLessThanOrEqual(
        imageClarity(Math.min(a, b), combMm) + 1e-6,
      );
    }),
  );
});

it('is never lower through a coarser comb', () => {
  fc.assert(
    fc.property(roughness, (alpha) => {
      const all = COMB_WIDTHS_MM.map((combMm) => imageClarity(alpha, combMm));
      expect(all).toEqual([...all].sort((a, b) => a - b));
    }),
  );
});

it('depends on the roughness over the width of the bars alone', () => {
  expect(imageClarity(0.002, 2)).toBeCloseTo(imageClarity(0.0005, 0.5), 10);
});

it('refuses a negative roughness', () => {
  expect(() => imageClarity(-0.1, 2)).toThrow('The roughness must be 0 or more, not -0.1.');
});
