import fc from 'fast-check';
import { expect, it } from 'vitest';
import curves from '../../src/optics/glossCurves.json';
import { glossIntegral } from '../../src/optics/glossIntegral';
import { glossUnits } from '../../src/optics/glossUnits';
import { integratedCurves } from './integratedCurves';

// Trial of this project with path-traced surfaces, n = 1.54, GGX with Smith shadowing; held to 1 gloss unit.
it.each([
  [0.005, 72.6, 92.5],
  [0.01, 48.2, 84.7],
  [0.02, 23.2, 65.9],
  [0.05, 5.5, 32.9],
  [0.1, 1.5, 14.7],
  [0.2, 0.4, 4.9],
  [0.3, 0.2, 2.2],
])('agrees with the trial at roughness %f', (alpha, at20, at60) => {
  expect(Math.abs(glossUnits(alpha, 1.54, 20) - at20)).toBeLessThanOrEqual(1);
  expect(Math.abs(glossUnits(alpha, 1.54, 60) - at60)).toBeLessThanOrEqual(1);
});

// ISO 2813 / ASTM D523, Fresnel gloss of perfect surfaces at 20, 60 and 85 degrees; the last line to whole units.
it.each([
  [1.4, 57.0, 71.9, 96.6],
  [1.5, 82.0, 89.1, 99.0],
  [1.54, 92.7, 95.7, 99.6],
  [1.6, 109.1, 105.2, 100.4],
  [1.76, 155, 129, 101.5],
])('ends at the Fresnel gloss of the standard at n = %f', (n, at20, at60, at85) => {
  expect(Math.abs(glossUnits(0, n, 20) - at20)).toBeLessThan(0.2);
  expect(Math.abs(glossUnits(0, n, 60) - at60)).toBeLessThan(0.1);
  expect(Math.abs(glossUnits(0, n, 85) - at85)).toBeLessThan(0.1);
});

const roughness = fc.double({ min: 0, max: 1.2, noNaN: true });
const angle = fc.constantFrom(20 as const, 60 as const, 85 as const);

it('never reads higher on a rougher surface', () => {
  fc.assert(
    fc.property(roughness, roughness, angle, (a, b, angleDeg) => {
      expect(glossUnits(Math.max(a, b), 1.54, angleDeg)).toBeLessThanOrEqual(
        glossUnits(Math.min(a, b), 1.54, angleDeg),
      );
    }),
  );
});

it('stays close to the integral between its knots', () => {
  const alpha = fc.double({ min: 1e-4, max: 1, noNaN: true });
  const index = fc.double({ min: 1.3, max: 2, noNaN: true });
  fc.assert(
    fc.property(alpha, index, angle, (a, n, angleDeg) => {
      expect(Math.abs(glossUnits(a, n, angleDeg) - glossIntegral(a, n, angleDeg))).toBeLessThan(0.05);
    }),
  );
});

it('takes far less than a millisecond once warm', () => {
  glossUnits(0.1, 1.55, 60);
  const start = performance.now();
  for (let call = 0; call < 1000; call++) glossUnits(0.001 + call * 1e-4, 1.55, 60);
  expect((performance.now() - start) / 1000).toBeLessThan(0.5);
});

it('refuses a negative roughness and an index below 1', () => {
  expect(() => glossUnits(-0.1, 1.54, 60)).toThrow('The roughness must be 0 or more, not -0.1.');
  expect(() => glossUnits(0.1, 0.5, 60)).toThrow('The refractive index must be 1 or more, not 0.5.');
});

it('interpolates curves that the integral gives to the last digit', () => {
  expect(curves).toEqual(integratedCurves());
});
