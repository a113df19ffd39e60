import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fresnelReflectance } from '../../src/optics/fresnelReflectance';
import table from '../golden/fresnelGloss.json';

it('mirrors 4 % head-on at n = 1.5', () => {
  // Born & Wolf, section 1.5.2: ((n − 1) / (n + 1))² = (0.5 / 2.5)².
  expect(fresnelReflectance(1.5, 1)).toBeCloseTo(0.04, 12);
});

it('mirrors only the senkrecht half at the Brewster angle', () => {
  const n = 1.54;
  const cosBrewster = 1 / Math.hypot(1, n);
  // Born & Wolf, section 1.5.3: tan θ = n, where the parallel part vanishes and rs = (n² − 1) / (n² + 1).
  expect(fresnelReflectance(n, cosBrewster)).toBeCloseTo(((n * n - 1) / (n * n + 1)) ** 2 / 2, 12);
});

// ISO 2813 / ASTM D523: gloss of perfect mirrors against n = 1.567, at 20, 60 and 85 degrees.
it.each([
  [1.4, '57.0', '71.9', '96.6'],
  [1.5, '82.0', '89.1', '99.0'],
  [1.54, '92.7', '95.7', '99.6'],
  [1.567, '100.0', '100.0', '100.0'],
  [1.6, '109.1', '105.2', '100.4'],
])('gives the gloss table of the standard to the printed digits at n = %f', (n, at20, at60, at85) => {
  const gloss = [20, 60, 85].map((angleDeg) => {
    const cosTheta = Math.cos((angleDeg * Math.PI) / 180);
    return ((100 * fresnelReflectance(n, cosTheta)) / fresnelReflectance(1.567, cosTheta)).toFixed(1);
  });
  expect(gloss).toEqual([at20, at60, at85]);
});

it('gives the whole gloss table from n = 1.40 to 1.80, to the digit the standard prints', () => {
  // tests/golden/fresnelGloss.json: ISO 2813 / ASTM D523, Fresnel in the form with angles.
  expect(table.rows.length).toBe(42);
  for (const [n, ...printed] of table.rows as [number, number, number, number][]) {
    for (const [place, angleDeg] of [20, 60, 85].entries()) {
      const cosTheta = Math.cos((angleDeg * Math.PI) / 180);
      const gloss = (100 * fresnelReflectance(n, cosTheta)) / fresnelReflectance(1.567, cosTheta);
      expect(Math.abs(gloss - printed[place]!)).toBeLessThan(table.tolerance + 1e-9);
    }
  }
});

it('mirrors more the higher the index, head-on', () => {
  const index = fc.double({ min: 1, max: 3, noNaN: true });
  fc.assert(
    fc.property(index, index, (n, m) => {
      // Closer together, the last digit of the two results decides.
      fc.pre(Math.abs(n - m) > 1e-9);
      expect(
        Math.sign(fresnelReflectance(n, 1) - fresnelReflectance(m, 1)) * Math.sign(n - m),
      ).toBeGreaterThanOrEqual(0);
    }),
  );
});

it('stays between 0 and 1 everywhere', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 3, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (n, cosTheta) => {
        const share = fresnelReflectance(n, cosTheta);
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
      },
    ),
  );
});

it('mirrors everything at grazing and nothing where there is no surface', () => {
  expect(fresnelReflectance(1.5, 0)).toBe(1);
  expect(fresnelReflectance(1, 0.7)).toBe(0);
});

it('refuses an index below 1 and an impossible cosine', () => {
  expect(() => fresnelReflectance(0.9, 1)).toThrow('The refractive index must be 1 or more, not 0.9.');
  expect(() => fresnelReflectance(1.5, 1.2)).toThrow('must lie in 0 to 1, not 1.2.');
});
