import fc from 'fast-check';
import { expect, it } from 'vitest';
import { distinctnessOfImage } from '../../src/optics/distinctnessOfImage';
import golden from '../golden/glossIntegral.json';

it('is 100 on a perfect polish', () => {
  expect(distinctnessOfImage(0)).toBeCloseTo(100, 8);
});

it('is what two slits 0.3° beside the mirrored ray receive, whatever the index', () => {
  // tests/golden/glossIntegral.json: SciPy, each slit integrated by itself, indexes 1.40 to 1.77.
  for (const [alpha, , percent] of golden.distinctnessOfImage.rows as [number, number, number][]) {
    expect(Math.abs(distinctnessOfImage(alpha) - percent)).toBeLessThan(golden.tolerance.distinctnessOfImage);
  }
});

it('never rises as the surface roughens', () => {
  const roughness = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(roughness, roughness, (a, b) => {
      // Below a hundredth of a percent the quadrature decides.
      expect(distinctnessOfImage(Math.max(a, b))).toBeLessThanOrEqual(
        distinctnessOfImage(Math.min(a, b)) + 0.01,
      );
    }),
  );
});

it('refuses a roughness above 1', () => {
  expect(() => distinctnessOfImage(1.1)).toThrow('The roughness must lie in 0 to 1, not 1.1.');
});
